import { describe, expect, it } from 'vitest';
import { COVER_LEVEL, cameraFor, levelAfter, openingLevel, toBay, toScreen } from '../../src/bay/camera';
import { dropTarget, type Gear, type Scene, underPointer } from '../../src/bay/gesture/underPointer';
import { distance } from '../../src/layout/course';
import { layoutIds, layoutOf } from '../../src/layout/layouts';

/** The bay's share of a 1024 x 600 screen, after instruments, job card and bars. */
const SMALL = { width: 588, height: 427 };
const PHONE = { width: 390, height: 240 };
const each = layoutIds.map((id) => [id, layoutOf(id)] as const);

const sceneOf = (id: string, gear: readonly Gear[] = []): Scene => ({
  layout: layoutOf(id),
  gear,
  mmPerPx: 1 / cameraFor(layoutOf(id), SMALL, COVER_LEVEL, null).scale,
});

describe('ports', () => {
  it.each(each)('of the %s stand at least 44 px apart on a 1024 x 600 screen', (_, layout) => {
    const { scale } = cameraFor(layout, SMALL, COVER_LEVEL, null);
    const [a, b] = layout.ports;
    expect(distance(a.at, b.at) * scale).toBeGreaterThanOrEqual(44);
  });

  it.each(each)('of the %s are all on a tablet, in what is drawn', (_, layout) => {
    const size = { width: 800, height: 800 };
    const camera = cameraFor(layout, size, COVER_LEVEL, null);
    for (const { at } of layout.ports) expect(toScreen(camera, at)[0]).toBeLessThan(size.width - 22);
    const [, top, , high] = layout.view;
    expect(toBay(camera, [0, 0])[1]).toBeGreaterThanOrEqual(top - 280);
    expect(toBay(camera, [0, size.height])[1]).toBeLessThanOrEqual(top + high + 280);
  });

  it.each(each)('of the %s are all on screen on a phone, 44 px apart', (_, layout) => {
    const camera = cameraFor(layout, PHONE, openingLevel(PHONE), null);
    for (const port of layout.ports) {
      const [x, y] = toScreen(camera, port.at);
      expect(x).toBeGreaterThan(22);
      expect(x).toBeLessThan(PHONE.width - 22);
      expect(y).toBeGreaterThan(22);
      expect(y).toBeLessThan(PHONE.height - 22);
    }
    const [a, b] = layout.ports;
    expect(distance(a.at, b.at) * camera.scale).toBeGreaterThanOrEqual(43.5);
  });

  it.each(each)('of the %s are found within 22 px of their middle', (id, layout) => {
    const scene = sceneOf(id);
    for (const port of layout.ports) {
      const edge = 21 * scene.mmPerPx;
      expect(dropTarget(scene, [port.at[0] - edge, port.at[1]])).toBe(port.id);
      expect(underPointer(scene, port.at)?.id).toBe(port.id);
    }
  });

  it('between two ports the nearer one wins', () => {
    const scene = { ...sceneOf('hatchback'), mmPerPx: 6 };
    const [a, b] = scene.layout.ports;
    const nearB = [a.at[0] * 0.4 + b.at[0] * 0.6, a.at[1] * 0.4 + b.at[1] * 0.6] as const;
    expect(dropTarget(scene, nearB)).toBe(b.id);
  });
});

describe('what lies under a pointer', () => {
  it('gear comes before ports', () => {
    const at = layoutOf('sedan').ports[0].at;
    const gear: Gear = { id: 'coupler:low', takeable: true, from: 'port-a', at, r: 40 };
    expect(underPointer(sceneOf('sedan', [gear]), at)).toEqual({
      id: 'coupler:low',
      takeable: true,
      from: 'port-a',
    });
  });

  it('a line is found on its tube, the smaller part inside a larger one', () => {
    expect(underPointer(sceneOf('hatchback'), [416, 330])?.id).toBe('suction');
    expect(underPointer(sceneOf('hatchback'), [1250, 520])?.id).toBe('battery');
  });

  it('bare fender is nothing, the mat a place to put things', () => {
    const scene = sceneOf('hatchback');
    expect(underPointer(scene, [1600, 300])).toBeNull();
    const end: Gear = { id: 'end:charging', takeable: true, from: null, at: [40, 500], r: 24 };
    const withEnd = { ...scene, gear: [end] };
    expect(dropTarget(withEnd, [44, 504], ['end:charging', 'mat'])).toBe('end:charging');
    expect(dropTarget(withEnd, [44, 504], ['port-b', 'mat'])).toBe('mat');
    expect(dropTarget(scene, [40, 500])).toBe('mat');
    expect(dropTarget(scene, [1600, 300])).toBeNull();
  });
});

describe('the camera', () => {
  it.each(each)('covers the host with the frame of the %s and cuts from the right only', (_, layout) => {
    const camera = cameraFor(layout, SMALL, COVER_LEVEL, null);
    const [vx, vy, vw, vh] = layout.view;
    expect(toScreen(camera, [vx, 0])[0]).toBeCloseTo(0);
    expect(toScreen(camera, [0, vy])[1]).toBeLessThanOrEqual(1e-9);
    expect(toScreen(camera, [vx + vw, vy + vh])[0]).toBeGreaterThanOrEqual(SMALL.width - 1e-9);
  });

  it('goes there and back', () => {
    const camera = cameraFor(layoutOf('sedan'), SMALL, 2, null);
    const [x, y] = toBay(camera, toScreen(camera, [456, 668]));
    expect(x).toBeCloseTo(456);
    expect(y).toBeCloseTo(668);
  });

  it('nearer and farther stop at their ends, whole is whole', () => {
    expect(levelAfter(4, 'nearer')).toBe(4);
    expect(levelAfter(0, 'farther')).toBe(0);
    expect(levelAfter(3, 'whole')).toBe(0);
    const { scale } = cameraFor(layoutOf('sedan'), SMALL, 0, null);
    expect(1784 * scale).toBeLessThanOrEqual(SMALL.width + 1e-9);
    expect(1003 * scale).toBeLessThanOrEqual(SMALL.height + 1e-9);
  });
});
