import { describe, expect, it } from 'vitest';
import { createChain, LED_STEPS, resample, rounded } from '../../src/bay/hose/chain';
import { drape, groundUnder, IN_HAND_MM } from '../../src/bay/hose/drape';
import { ledWay, restWay } from '../../src/bay/hose/hoseWays';
import { distance } from '../../src/layout/course';
import type { PointMm } from '../../src/layout/layout';
import { layoutIds, layoutOf } from '../../src/layout/layouts';
import { hazardsOf, routesOf, zonesAlong } from '../../src/layout/zones';

const each = layoutIds.map((id) => [id, layoutOf(id)] as const);
const lead = (chain: ReturnType<typeof createChain>, way: readonly PointMm[]): void => {
  for (const point of resample(way, 90)) {
    chain.pull(point);
    chain.step(1);
  }
};

describe('a hose', () => {
  it.each(each)(
    'led along each named route of the %s lies in what the route names as dangerous, and in nothing else dangerous',
    (_, layout) => {
      for (const port of layout.ports) {
        for (const route of routesOf(layout, port.id)) {
          const chain = createChain(ledWay(layout, 'low', port.id, route.through));
          chain.step(LED_STEPS);
          const lies = hazardsOf(layout, zonesAlong(layout, [port.at, ...chain.points()]));
          expect(lies.sort(), `${port.id} ${route.id}`).toEqual(hazardsOf(layout, route.through).sort());
          chain.dispose();
        }
      }
    },
  );

  it('dragged round through the fan still lies in the fan when it is put on its port', () => {
    const layout = layoutOf('hatchback');
    const chain = createChain(restWay(layout, 'low'));
    const port = layout.ports.find((p) => p.id === 'port-b');
    if (!port) throw new Error('the hatchback has a port-b');
    lead(chain, [chain.points()[0], [330, 700], [650, 740], [920, 700], [760, 520], [560, 440], port.at]);
    chain.step(40);
    expect(zonesAlong(layout, [port.at, ...chain.points()])).toContain('fan');
  });

  it('led straight to its port stays clear of fan and belt', () => {
    const layout = layoutOf('hatchback');
    const chain = createChain(restWay(layout, 'low'));
    lead(chain, [chain.points()[0], [250, 450], [400, 430]]);
    chain.step(40);
    expect(hazardsOf(layout, zonesAlong(layout, [[416, 430], ...chain.points()]))).toEqual([]);
  });

  it('pays out over the edge, keeps its other end there and comes to rest', () => {
    const chain = createChain([
      [100, 0],
      [0, 0],
    ]);
    lead(chain, [
      [100, 0],
      [700, 0],
    ]);
    const points = chain.points();
    expect(points[0]).toEqual([700, 0]);
    expect(points[points.length - 1]).toEqual([0, 0]);
    let moving = true;
    for (let i = 0; i < 200 && moving; i++) moving = chain.step(5);
    expect(moving).toBe(false);
  });
});

describe('ways', () => {
  it('are cut into equal lengths', () => {
    const points = resample(
      [
        [0, 0],
        [30, 0],
        [30, 60],
      ],
      4,
    );
    expect(points).toEqual([
      [0, 0],
      [30, 0],
      [30, 30],
      [30, 60],
    ]);
  });

  it('keep their ends when their corners are rounded', () => {
    const way: PointMm[] = [
      [0, 0],
      [100, 0],
      [100, 100],
    ];
    const round = rounded(way);
    expect(round[0]).toEqual([0, 0]);
    expect(round[round.length - 1]).toEqual([100, 100]);
    expect(Math.min(...round.map((p) => distance(p, [100, 0])))).toBeGreaterThan(10);
  });
});

describe('a hose sent home', () => {
  const home = restWay(layoutOf('hatchback'), 'low');
  const dropped = (): ReturnType<typeof createChain> => {
    const chain = createChain(home);
    lead(chain, [home[0], [500, 300], [700, 500]]);
    chain.sendHome(home);
    return chain;
  };

  it('lies along its way to the last digit within two seconds, and then moves no more', () => {
    const chain = dropped();
    let steps = 0;
    while (chain.step(1)) steps++;
    expect(steps).toBeLessThan(120);
    const lies = chain.points();
    expect(lies).toEqual(resample(home, lies.length));
    expect(chain.step(30)).toBe(false);
    expect(chain.points()).toEqual(lies);
  });

  it('falls as a weight does: slowly at first, without swinging past', () => {
    const chain = dropped();
    const away = (): number => distance(chain.points()[0], home[0]);
    const start = away();
    chain.step(1);
    const first = start - away();
    chain.step(6);
    const before = away();
    chain.step(1);
    expect(before - away()).toBeGreaterThan(1.5 * first);
    let last = away();
    while (chain.step(1)) {
      expect(away()).toBeLessThanOrEqual(last + 0.01);
      last = away();
    }
  });

  it('is taken up again by a pull on the way', () => {
    const chain = dropped();
    chain.step(5);
    chain.pull([600, 400]);
    chain.step(5);
    expect(chain.points()[0]).toEqual([600, 400]);
  });
});

describe('a bent hose', () => {
  it('keeps a radius of three times its width where it has come to rest', () => {
    const chain = createChain(restWay(layoutOf('hatchback'), 'low'));
    lead(chain, [chain.points()[0], [500, 300], [600, 560], [300, 500]]);
    while (chain.step(1));
    const points = chain.points();
    const radii = points.slice(2, -2).map((b, i) => {
      const [a, c] = [points[i + 1], points[i + 3]];
      const twice = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
      return (distance(a, b) * distance(b, c) * distance(a, c)) / Math.max(1e-6, 2 * twice);
    });
    expect(Math.min(...radii)).toBeGreaterThan(3 * 19 * 0.5);
  });
});

describe('how high a hose hangs', () => {
  const layout = layoutOf('hatchback');
  const across: PointMm[] = Array.from({ length: 23 }, (_, i): PointMm => [470 - i * 25, 400]);

  it('sags between the hand and the fender, and lies on the fender', () => {
    const heights = drape(layout, across, IN_HAND_MM);
    const ground = across.map((point) => groundUnder(layout, point));
    const over = heights.map((h, i) => h + ground[i]);
    for (let i = 1; i < over.length - 1; i++)
      if (heights[i] > 8.1) expect(over[i], `${i}`).toBeLessThan((over[i - 1] + over[i + 1]) / 2);
    expect(heights[heights.length - 1]).toBe(8);
    expect(heights[0]).toBeGreaterThan(100);
  });

  it('is never under what it lies on', () => {
    expect(Math.min(...drape(layout, across, 0))).toBeGreaterThanOrEqual(8);
  });
});
