import { beforeAll, describe, expect, it } from 'vitest';
import { boundsOf } from '../../src/bay/drawing/bounds';
import { canDrawing, canOutlet } from '../../src/bay/drawing/gear/can';
import { port } from '../../src/bay/drawing/gear/cap';
import { couplerSide, couplerTop } from '../../src/bay/drawing/gear/coupler';
import { sweatingLine } from '../../src/bay/drawing/gear/dew';
import { fittingSide } from '../../src/bay/drawing/gear/fittingSide';
import { frostedLine, frostedPot } from '../../src/bay/drawing/gear/frost';
import { keepClear } from '../../src/bay/drawing/gear/keepClear';
import { portCover } from '../../src/bay/drawing/gear/portCover';
import type { Paint } from '../../src/bay/drawing/paints';
import { mixed, paletteOf } from '../../src/bay/drawing/palette';
import { clutchHub } from '../../src/bay/drawing/parts/clutchHub';
import { fanStill, fanTurning } from '../../src/bay/drawing/parts/fan';
import { loadParts } from '../../src/bay/drawing/parts/partBook';
import { stillPart } from '../../src/bay/drawing/parts/stillPart';
import { pathBox } from '../../src/bay/drawing/pathBox';
import { bayPicture } from '../../src/bay/drawing/picture';
import type { Drawing } from '../../src/bay/drawing/record';
import { HOSE_FACTOR, runsOf } from '../../src/bay/drawing/run';
import { layoutIds, layoutOf } from '../../src/layout/layouts';
import { partOf } from '../../src/layout/trace';

const each = layoutIds.map((id) => [id, layoutOf(id)] as const);
const LABEL = ['A/C', 'R-134a 0.48 kg'] as const;

const allOf = (id: string): Drawing => {
  const { below, fans, above } = bayPicture(layoutOf(id), LABEL, 0.15);
  return [...below, ...fans.flatMap(fanStill), ...fans.flatMap(fanTurning), ...above];
};

function inksOf(drawing: Drawing): Set<string> {
  const inks = new Set<string>();
  const add = (paint: Paint): void => {
    if (typeof paint === 'string') inks.add(paint);
    else for (const stop of paint.stops) inks.add(stop.ink);
  };
  for (const record of drawing) {
    if ('text' in record) inks.add(record.ink);
    else {
      if (record.fill !== undefined) add(record.fill);
      if (record.ink !== undefined) inks.add(record.ink);
    }
  }
  return inks;
}

const gear = (): Drawing => [
  ...couplerTop('low', 0.4, 1),
  ...couplerTop('high', 3, 0),
  ...couplerSide('low', -90),
  ...couplerSide('high', 0, true),
  ...canDrawing('R-1234yf', 180, 6, 0.4),
  ...port(13, [0, 0], { cap: 'letter', strap: true }),
  ...port(9.5, [0, 0], { cap: 'missing', strap: true }),
  ...portCover({ rect: [0, 0, 250, 96] }),
  ...fittingSide(11, 'missing', 19),
  ...fittingSide(17, 'letter', 12.7),
  ...port(16, [0, 0], { cap: 'missing', strap: true }),
  ...keepClear([0, 0, 300, 90]),
  ...frostedPot({ id: 'accumulator', x: 0, y: 0, r: 56, lip: 80 }, 1),
  ...clutchHub(partOf(layoutOf('sedan'), 'clutch'), true, 1),
  ...clutchHub(partOf(layoutOf('hatchback'), 'compressor'), false),
];

beforeAll(async () => {
  await Promise.all(layoutIds.map(loadParts));
});

describe('draw records', () => {
  it.each(each)('of the %s are the same every time', (id) => {
    expect(JSON.stringify(allOf(id))).toBe(JSON.stringify(allOf(id)));
  });

  it.each(each)('of the %s hold no number that is not one', (id) => {
    for (const record of [...allOf(id), ...gear()])
      expect(JSON.stringify(record)).not.toMatch(/NaN|null|Infinity/);
  });

  it('name only colours that every palette has', () => {
    for (const [id, layout] of each) {
      const inks = inksOf([...allOf(id), ...gear()]);
      for (const dark of [false, true]) {
        const palette = paletteOf(dark, layout.paint);
        expect([...inks].filter((ink) => palette[ink] === undefined)).toEqual([]);
      }
    }
  });

  it('leave red and blue to the hoses: no part of the car uses them', () => {
    for (const [id] of each)
      expect([...inksOf(allOf(id))].filter((ink) => /^(low|high)/.test(ink))).toEqual([]);
  });

  it.each(each)('of the %s draw every part there is', (_, layout) => {
    for (const part of layout.parts) expect(() => stillPart(part)).not.toThrow();
  });

  it('show orange cables in the electric car, and in no other', () => {
    const orange = each.filter(([id]) => [...inksOf(allOf(id))].some((ink) => ink.startsWith('cable')));
    expect(orange.map(([id]) => id)).toEqual(['electric']);
  });

  it('give every car a paint and a nose that tell it from the others', () => {
    expect(new Set(each.map(([, { paint }]) => paint)).size).toBe(each.length);
    expect(new Set(each.map(([, { body }]) => body)).size).toBe(each.length);
  });

  it('a kind nobody can draw is said so', () => {
    expect(() => stillPart({ id: 'x', kind: 'turbine', at: [0, 0], z: 1 })).toThrow(
      /nobody can draw a "turbine"/,
    );
  });
});

describe('lines', () => {
  it('are drawn at one scale over their true diameter', () => {
    const runs = runsOf(layoutOf('hatchback'));
    const width = (id: string): number => runs.find((run) => run.line.id === id)?.width ?? 0;
    expect(width('suction') / width('liquid')).toBeCloseTo(2);
    expect(HOSE_FACTOR).toBeGreaterThan(1);
  });

  it('go over one another where their heights say so', () => {
    const suction = runsOf(layoutOf('sedan')).find((run) => run.line.id === 'suction');
    expect(suction?.over).toHaveLength(1);
  });

  it('frost grows from the cold end and ends where its cover does', () => {
    const suction = runsOf(layoutOf('hatchback')).find((run) => run.line.id === 'suction');
    if (!suction) throw new Error('the hatchback has a suction line');
    const half = boundsOf(frostedLine(suction, 0, 0.3));
    const full = boundsOf(frostedLine(suction, 0, 1));
    expect(half.h).toBeLessThan(full.h * 0.6);
    expect(frostedLine(suction, 0, 0)).toEqual([]);
    expect(sweatingLine(suction, 0.2, 0.9).length).toBeGreaterThan(40);
  });
});

describe('caps', () => {
  it('blank: the same drawing on both fittings but for size', () => {
    const kinds = (bore: 13 | 16) =>
      port(bore, [0, 0], { cap: 'blank', strap: false }).map((r) =>
        'text' in r ? 'text' : (r.ink ?? 'fill'),
      );
    expect(kinds(13)).toEqual(kinds(16));
    expect(boundsOf(port(16, [0, 0], { cap: 'blank', strap: false })).w).toBeGreaterThan(
      boundsOf(port(13, [0, 0], { cap: 'blank', strap: false })).w,
    );
  });

  it('of every width wear the letter of their own side, and a side view that says how wide', () => {
    for (const bore of [9.5, 11, 13, 14, 16, 17] as const) {
      const letters = port(bore, [0, 0], { cap: 'letter', strap: false }).flatMap((r) =>
        'text' in r ? [r.text] : [],
      );
      expect(letters).toEqual([bore === 11 || bore === 13 || bore === 14 ? 'L' : 'H']);
      const told = fittingSide(bore, 'missing', 12).flatMap((r) => ('text' in r ? [r.text] : []));
      expect(told).toEqual([`${bore} mm`]);
    }
  });

  it('swapped wears the other side’s letter', () => {
    const letters = (bore: 13 | 16) =>
      port(bore, [0, 0], { cap: 'swapped', strap: false }).flatMap((r) => ('text' in r ? [r.text] : []));
    expect(letters(13)).toEqual(['H']);
    expect(letters(16)).toEqual(['L']);
  });
});

describe('the can', () => {
  it('turns its outlet with its tilt: up right when upright, down left when inverted', () => {
    const [ux, uy] = canOutlet(0);
    const [ix, iy] = canOutlet(180);
    expect(ux).toBeGreaterThan(0);
    expect(uy).toBeLessThan(0);
    expect(ix).toBeCloseTo(-ux);
    expect(iy).toBeCloseTo(-uy);
  });
});

describe('boxes', () => {
  it('of arcs and curves are theirs, not those of their end points', () => {
    const circle = pathBox('M-10 0A10 10 0 1 1 10 0A10 10 0 1 1 -10 0Z');
    expect(circle.w).toBeCloseTo(20, 1);
    expect(circle.h).toBeCloseTo(20, 0);
    expect(pathBox('M0 0q10 20 20 0').h).toBeCloseTo(10, 0);
    expect(pathBox('M5 5h10v-3l-2 -2Z')).toEqual({ x: 5, y: 0, w: 10, h: 5 });
  });

  it('colours are mixed channel by channel', () => {
    expect(mixed('#000000', '#ffffff', 0.5)).toBe('#808080');
    expect(() => paletteOf(false, 'scarlet')).toThrow(/sage/);
  });
});
