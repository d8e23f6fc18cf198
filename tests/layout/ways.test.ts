import { describe, expect, it } from 'vitest';
import { layoutIds, layoutOf } from '../../src/layout/layouts';
import { isWay } from '../../src/layout/zones';

describe('a way for a hose', () => {
  it('is every route the layouts name', () => {
    for (const id of layoutIds) {
      const layout = layoutOf(id);
      for (const { port, through, id: route } of layout.routes)
        expect([id, port, route, isWay(layout, port, through)]).toEqual([id, port, route, true]);
    }
  });

  it('begins at its port, goes from neighbour to neighbour, and ends at the gauges', () => {
    const layout = layoutOf('hatchback');
    expect(isWay(layout, 'port-b', [])).toBe(false);
    expect(isWay(layout, 'port-b', ['mat'])).toBe(false);
    expect(isWay(layout, 'port-b', ['side-middle', 'mat'])).toBe(true);
    expect(isWay(layout, 'port-b', ['side-middle', 'corner-front', 'fan'])).toBe(false);
    expect(isWay(layout, 'port-b', ['side-middle', 'far-side', 'fender'])).toBe(false);
    expect(isWay(layout, 'port-b', ['side-middle', 'no-such', 'fender'])).toBe(false);
  });
});
