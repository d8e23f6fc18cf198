import { describe, expect, it } from 'vitest';
import { type BayFrame, stillFrame } from '../../src/bay/bayFrame';
import { wetted } from '../../src/bay/drawing/gear/wetted';
import { emptyHand, handStep, type Under } from '../../src/bay/gesture/handGesture';
import { dangersOf } from '../../src/bay/gesture/hoseDanger';
import { isShaken, shakeOn, startShaking } from '../../src/bay/gesture/shaking';
import { LED_STEPS, laidAlong } from '../../src/bay/hose/chain';
import { ledWay } from '../../src/bay/hose/hoseWays';
import { pushedOn, REFUSED_LIFT_MM, refused } from '../../src/bay/scene/couplerMotion';
import { handHint } from '../../src/bay/twin/handHint';
import type { PointMm } from '../../src/layout/layout';
import { layoutIds, layoutOf } from '../../src/layout/layouts';
import { hazardsOf, routesOf } from '../../src/layout/zones';

const valid = (): readonly string[] => ['port-b', 'mat'];
const onPort: Under = { id: 'coupler:low', takeable: true, from: 'port-b' };
const pressed = handStep(emptyHand(), { kind: 'down', under: onPort, at: [0, 0] }).hand;

describe('a coupler on its port', () => {
  it('pulled at a little is tugged and holds: letting go does nothing', () => {
    const { hand } = handStep(pressed, { kind: 'move', at: [20, 0], valid });
    expect(hand).toMatchObject({ doing: 'pressing', tugged: [20, 0] });
    expect(handStep(hand, { kind: 'up', at: [20, 0], over: null, valid })).toEqual({
      hand: emptyHand(),
      intents: [],
    });
  });

  it('pulled farther comes off into the hand', () => {
    expect(handStep(pressed, { kind: 'move', at: [60, 0], valid }).hand.doing).toBe('carrying');
  });
});

describe('danger', () => {
  it.each(layoutIds.map((id) => [id, layoutOf(id)] as const))(
    'is seen along each way of the %s before it is taken, and only where it is',
    (_, layout) => {
      for (const port of layout.ports)
        for (const { through } of routesOf(layout, port.id)) {
          const seen = new Set(
            dangersOf(layout, [
              port.at,
              ...laidAlong(ledWay(layout, 'low', port.id, through), LED_STEPS),
            ]).map((d) => d.hazard),
          );
          expect([...seen].sort()).toEqual(hazardsOf(layout, through).sort());
        }
    },
  );

  it('marks the stretch that lies in the zone', () => {
    const layout = layoutOf('hatchback');
    const [danger, ...others] = dangersOf(layout, [
      [300, 700],
      [700, 700],
    ]);
    expect(others).toEqual([]);
    expect(danger).toMatchObject({ zone: 'fan', hazard: 'fan' });
    const { rect } = layout.zones.find(({ id }) => id === 'fan') ?? { rect: [0, 0, 0, 0] };
    for (const [x] of danger.stretch) expect(x).toBeGreaterThanOrEqual(rect[0]);
  });
});

describe('a can moved to and fro', () => {
  const move = (points: readonly PointMm[], everyS: number) =>
    points.reduce((now, at, i) => shakeOn(now, at, i * everyS), startShaking(points[0], 0));
  const strokes = (count: number): PointMm[] =>
    Array.from({ length: count }, (_, i): PointMm => [i % 2 ? 60 : 0, 0]);

  it('quickly is shaken', () => expect(isShaken(move(strokes(7), 0.12))).toBe(true));
  it('slowly is not', () => expect(isShaken(move(strokes(7), 0.8))).toBe(false));
  it('carried straight on is not', () =>
    expect(
      isShaken(
        move(
          Array.from({ length: 30 }, (_, i): PointMm => [i * 20, 0]),
          0.05,
        ),
      ),
    ).toBe(false));
});

describe('frost on a tilted can', () => {
  const areaOf = (outline: readonly (readonly [number, number])[]): number =>
    Math.abs(
      outline.reduce((sum, [x, y], i) => {
        const [nx, ny] = outline[(i + 1) % outline.length];
        return sum + x * ny - nx * y;
      }, 0),
    ) / 2;

  it.each([0, 35, 90, 145, 180])('covers the same share of the wall at %i degrees', (tilt) => {
    const whole = areaOf(wetted(72, 128, 14, 1, tilt).outline);
    expect(areaOf(wetted(72, 128, 14, 0.4, tilt).outline) / whole).toBeCloseTo(0.4, 3);
  });

  it('is at the foot of an upright can and at the tap of an inverted one', () => {
    expect(wetted(72, 128, 14, 0.3, 0).contains(0, 60)).toBe(true);
    expect(wetted(72, 128, 14, 0.3, 180).contains(0, -60)).toBe(true);
    expect(wetted(72, 128, 14, 0.3, 180).contains(0, 60)).toBe(false);
  });

  it('ends level however the can is held', () => {
    const tilt = (40 * Math.PI) / 180;
    const world = ([x, y]: readonly [number, number]): number => x * Math.sin(tilt) + y * Math.cos(tilt);
    const [a, b] = wetted(72, 128, 14, 0.5, 40).surface;
    expect(world(a)).toBeCloseTo(world(b), 1);
  });
});

describe('how a coupler moves', () => {
  it('goes down, clicks once it is down, is tugged after that, and rests', () => {
    expect(pushedOn(0).liftMm).toBeGreaterThan(20);
    expect(pushedOn(0.05).click).toBeNull();
    expect(pushedOn(0.2)).toMatchObject({ liftMm: 0, tugMm: 0 });
    expect(pushedOn(0.2).click).not.toBeNull();
    expect(pushedOn(0.52).tugMm).toBeGreaterThan(5);
    expect(pushedOn(2)).toEqual({ liftMm: 0, tugMm: 0, click: null, done: true });
  });

  it('over a wrong fitting stands 12 mm off and is nudged twice; with motion reduced it only stands off', () => {
    const at = (still: boolean) => Array.from({ length: 90 }, (_, i) => refused(i / 100, still).liftMm);
    const lows = at(false).filter((lift, i, all) => i > 14 && lift < all[i - 1] && lift < all[i + 1]);
    expect(lows).toHaveLength(2);
    expect(new Set(at(true))).toEqual(new Set([REFUSED_LIFT_MM]));
  });
});

describe('the line on what is held', () => {
  const layout = layoutOf('hatchback');
  const frame: BayFrame = stillFrame(layout.ports.map(({ id }) => id));
  const carrying = handStep(emptyHand(), { kind: 'take', under: { ...onPort, from: null }, valid }).hand;
  const inFan = dangersOf(layout, [
    [300, 700],
    [700, 700],
  ]);

  it('says where it goes, and nothing with an empty hand', () => {
    expect(handHint(layout, frame, carrying, null, [])).toMatch(/goes on the 13 mm port, middle left\. Esc/);
    expect(handHint(layout, frame, emptyHand(), null, [])).toBe('');
  });

  it('says no key to a finger, and less', () => {
    expect(handHint(layout, frame, carrying, null, [], true)).toBe('Goes on the 13 mm port, middle left.');
  });

  it('tells a danger by what turns now and what would', () => {
    expect(handHint(layout, frame, carrying, null, inFan)).toMatch(/once the fan turns/);
    const turning = { ...frame, fansTurning: { fan: true } };
    expect(handHint(layout, turning, carrying, null, inFan)).toMatch(/in the fan: it will be caught/);
  });
});
