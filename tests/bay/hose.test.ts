import { describe, expect, it } from 'vitest';
import { createChain, LED_STEPS, resample, rounded } from '../../src/bay/hose/chain';
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
