import { beforeAll, describe, expect, it, test } from 'vitest';
import { boundsOf } from '../../src/bay/drawing/bounds';
import { paletteOf } from '../../src/bay/drawing/palette';
import { clutchFace, clutchHub } from '../../src/bay/drawing/parts/clutchHub';
import { fanPlace, fanTurning } from '../../src/bay/drawing/parts/fan';
import { isFan } from '../../src/bay/drawing/parts/isFan';
import { loadParts } from '../../src/bay/drawing/parts/partBook';
import { fileOf, partDrawing, stretchOf } from '../../src/bay/drawing/parts/partDrawing';
import { sightGlass } from '../../src/bay/drawing/parts/sightGlass';
import { stillPart } from '../../src/bay/drawing/parts/stillPart';
import { stretchedPath } from '../../src/bay/drawing/parts/stretchedPath';
import type { Drawing } from '../../src/bay/drawing/record';
import { drillBay } from '../../src/layout/drill/drillBay';
import type { Part } from '../../src/layout/layout';
import { layoutIds, layoutOf } from '../../src/layout/layouts';

const each = layoutIds.map((id) => [id, layoutOf(id)] as const);
/** Kinds drawn from the layout's numbers, or with what they sit in. */
const OTHERWISE: ReadonlySet<string> = new Set(['belt-front', 'belt-side', 'undrawn']);
const isDrawn = ({ kind }: Part): boolean => !OTHERWISE.has(kind);
const block = (more: Partial<Part>): Part => ({ id: 'b', kind: 'block', at: [0, 0], z: 1, ...more });

/** A line's end from its anchor: fittings vary by car. */
const NEAR_MM = 24;
const headingOf = (dx: number, dy: number): string =>
  Math.abs(dx) > Math.abs(dy) ? (dx > 0 ? 'right' : 'left') : dy > 0 ? 'front' : 'rear';

beforeAll(async () => {
  await Promise.all([...layoutIds, 'drill'].map(loadParts));
});

describe('parts', () => {
  it.each(each)('of the %s wear a drawing that fills what a pointer finds', (_, layout) => {
    for (const part of layout.parts.filter(isDrawn)) {
      const drawing = part.kind === 'label' ? partDrawing(part, 'body') : stillPart(part);
      if (part.kind === 'clutch-front') continue;
      const box = boundsOf(drawing);
      expect(box.w * box.h, part.id).toBeGreaterThan(200);
      if (!part.hit) continue;
      const [x, y, w, h] = part.hit;
      const across = Math.min(x + w, box.x + box.w) - Math.max(x, box.x);
      const down = Math.min(y + h, box.y + box.h) - Math.max(y, box.y);
      expect(across > 0.5 * w && down > 0.5 * h, `${part.id}: its hit box lies off its drawing`).toBe(true);
    }
  });

  it.each(each)('of the %s are neither blown up nor shrunk out of shape', (_, layout) => {
    for (const part of layout.parts.filter(isDrawn)) {
      const { kx, ky } = stretchOf(part);
      expect(kx > 0.4 && kx < 2 && ky > 0.4 && ky < 2, `${part.id} is stretched ${kx} by ${ky}`).toBe(true);
    }
  });

  it.each(each)(
    'of the %s have an anchor where a refrigerant line ends, and it leaves as that says',
    (_, layout) => {
      const ends = layout.lines.flatMap(({ id, from, to, way }) => [
        { line: id, part: from, at: way[0], next: way[1] },
        { line: id, part: to, at: way[way.length - 1], next: way[way.length - 2] },
      ]);
      for (const { line, part: partId, at, next } of ends) {
        const part = layout.parts.find((one) => one.id === partId);
        const anchors = part ? Object.values(fileOf(part).meta.anchors ?? {}) : [];
        if (!part || anchors.length === 0) continue;
        const { kx, ky } = stretchOf(part);
        const near = anchors.filter(
          ([x, y]) => Math.hypot(part.at[0] + x * kx - at[0], part.at[1] + y * ky - at[1]) < NEAR_MM,
        );
        const leaves = near.map(([, , way]) => way);
        const isGood = leaves.includes('any') || leaves.includes(headingOf(next[0] - at[0], next[1] - at[1]));
        expect(isGood, `${line} at ${partId}: ${leaves.join(', ') || 'no anchor near'}`).toBe(true);
      }
    },
  );

  test('of forty drill bays all wear a drawing that the drill fetches', () => {
    const kinds = new Set<string>();
    for (let seed = 1; seed <= 40; seed++) {
      for (const part of drillBay(seed, ((seed % 4) + 1) as 1 | 2 | 3 | 4).layout.parts) {
        kinds.add(part.drawing === undefined ? part.kind : `${part.kind}-${part.drawing}`);
        expect(() => stillPart(part)).not.toThrow();
      }
    }
    expect(kinds.size).toBeGreaterThan(22);
  });

  it('are placed, turned and stretched, and keep the shape of what they hold', () => {
    const own = boundsOf(stillPart(block({})));
    const wide = boundsOf(stillPart(block({ size: { w: 112, h: 34 } })));
    const moved = boundsOf(stillPart(block({ at: [100, 50] })));
    expect(wide.w).toBeGreaterThan(own.w * 1.7);
    expect(wide.h).toBeCloseTo(own.h, 0);
    expect([moved.x - own.x, moved.y - own.y]).toEqual([100, 50]);
    const bolts = (drawing: Drawing): number =>
      drawing.filter((record) => 'd' in record && /^M-7 0A7 7 /.test(record.d)).length;
    expect(bolts(stillPart(block({ size: { w: 112, h: 80 } })))).toBe(bolts(stillPart(block({}))));
    expect(bolts(stillPart(block({})))).toBeGreaterThan(0);
  });

  it('refuse a size that their drawing does not have, and a drawing there is not', () => {
    expect(() => stillPart(block({ size: { r: 4 } }))).toThrow(/has no size.r/);
    expect(() => stillPart(block({ drawing: 'turquoise' }))).toThrow(/nobody can draw a "block-turquoise"/);
  });
});

describe('what turns', () => {
  it.each(each)('in the %s has a mouth as wide as its blades, inside its shroud', (_, layout) => {
    for (const part of layout.parts.filter(isFan)) {
      const { r, squash, width } = fanPlace(part);
      const blades = boundsOf(fanTurning(part));
      expect(blades.w / 2).toBeGreaterThan(r * 0.85);
      expect(blades.w / 2).toBeLessThan(r * 1.1);
      expect(2 * r).toBeLessThan(width);
      expect(squash).toBeGreaterThan(0.25);
      expect(squash).toBeLessThan(0.45);
    }
  });

  it('is another picture when the clutch is engaged, and yet another when its plate has turned', () => {
    for (const [id, partId] of [
      ['sedan', 'clutch'],
      ['hatchback', 'compressor'],
    ] as const) {
      const part = layoutOf(id).parts.find((one) => one.id === partId) as Part;
      const shown = [clutchHub(part, false), clutchHub(part, true, 0, 0), clutchHub(part, true, 1, 1)];
      expect(new Set(shown.map((drawing) => JSON.stringify(drawing))).size).toBe(3);
    }
    expect(clutchFace(true)).not.toEqual(clutchFace(false));
  });

  it('foams by the share of bubbles, and streaks with oil', () => {
    const counts = [0, 0.25, 0.5, 1].map((bubbles) => sightGlass(0, 0, bubbles).length);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    expect(new Set(counts).size).toBe(4);
    expect(sightGlass(0, 0, 0, true).length).toBeGreaterThan(sightGlass(0, 0, 0).length);
  });
});

describe('a stretched path', () => {
  it('scales each number by what it stands for', () => {
    expect(stretchedPath('M1 2L3 4H5V6Q1 1 2 2Z', 2, 10)).toBe('M2 20L6 40H10V60Q2 10 4 20Z');
    expect(stretchedPath('M0 0A5 6 0 0 1 10 20', 2, 3)).toBe('M0 0A10 18 0 0 1 20 60');
  });
});

describe('palettes', () => {
  it('have a light and a dark colour for every token', () => {
    const [light, dark] = [paletteOf(false, 'sage'), paletteOf(true, 'sage')];
    expect(Object.keys(light).sort()).toEqual(Object.keys(dark).sort());
  });
});
