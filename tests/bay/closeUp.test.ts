/** What is seen from near: there is a view of everything that can be looked at, and it follows the numbers it is told. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type BayFrame, type LabelPrint, stillFrame } from '../../src/bay/bayFrame';
import { viewOf } from '../../src/bay/closeUp';
import { dyeGlow, oilPatch, soapFoam } from '../../src/bay/drawing/gear/leakMarks';
import { paletteOf } from '../../src/bay/drawing/palette';
import { loadParts } from '../../src/bay/drawing/parts/partBook';
import type { Drawing } from '../../src/bay/drawing/record';
import { boreOf, isThreaded } from '../../src/layout/bores';
import { layoutIds, layoutOf } from '../../src/layout/layouts';
import { stopsOf } from '../../src/layout/order';
import { loopLines } from '../../src/layout/trace';

beforeAll(async () => {
  await Promise.all(layoutIds.map(loadParts));
});

const each = layoutIds.map((id) => [id, layoutOf(id)] as const);
const PRINT: LabelPrint = {
  look: 'printed',
  over: '',
  heading: 'AIR CONDITIONING',
  rows: [['Refrigerant', 'R-134a']],
  signed: '',
  note: 'Invented.',
  burns: true,
};

function frameOf(id: string, more: Partial<BayFrame> = {}): BayFrame {
  return { ...stillFrame(layoutOf(id).ports.map((port) => port.id)), print: PRINT, ...more };
}

function drawn(id: string, target: string, more: Partial<BayFrame> = {}): Drawing {
  const view = viewOf(layoutOf(id), frameOf(id, more), target, false);
  if (!view) throw new Error(`nothing to be seen of "${target}" in the ${id}`);
  return view.drawing;
}

const texts = (drawing: Drawing): string[] =>
  drawing.flatMap((record) => ('text' in record ? [record.text] : []));

function inks(drawing: Drawing): string[] {
  return drawing.flatMap((record) => {
    if ('text' in record) return [record.ink];
    const { fill, ink } = record;
    const filled =
      fill === undefined ? [] : typeof fill === 'string' ? [fill] : fill.stops.map((stop) => stop.ink);
    return ink === undefined ? filled : [...filled, ink];
  });
}

describe('a close-up', () => {
  it('is there of a coupler that lies loose, its mouth as wide as what it goes over, and of none on a port', () => {
    const hose = { id: 'low', port: null, open: false, route: [], caught: false } as const;
    const seen = (more: object) =>
      viewOf(
        layoutOf('hatchback'),
        frameOf('hatchback', { hoses: [{ ...hose, ...more }] }),
        'coupler:low',
        false,
      );
    const drawings = [{ bore: 13 }, { bore: 16 }, {}].map((more) =>
      JSON.stringify(seen(more as object)?.drawing),
    );
    expect(new Set(drawings).size).toBe(3);
    expect(seen({ port: 'port-a' })).toBeNull();
    expect(texts(seen({ bore: 16 })?.drawing ?? [])).toContain('16 mm');
    const known = Object.keys(paletteOf(false, layoutOf('hatchback').paint));
    for (const more of [{ bore: 13 }, {}])
      expect(inks(seen(more)?.drawing ?? []).filter((ink) => !known.includes(ink))).toEqual([]);
  });

  it.each(each)('is there for everything of the %s that can be looked at, its joints too', (id, layout) => {
    const joints = loopLines(layout).flatMap(({ id: line, from, to }) => [
      `${line}-${from}`,
      `${line}-${to}`,
    ]);
    for (const target of [...stopsOf(layout).map((stop) => stop.id), ...joints]) {
      const view = viewOf(layout, frameOf(id), target, false);
      expect(view?.box.every(Number.isFinite), target).toBe(true);
      expect((view?.box[2] ?? 0) / (view?.box[3] ?? 1), target).toBeGreaterThan(1.2);
    }
    expect(viewOf(layout, frameOf(id), 'nothing', false)).toBeNull();
  });

  it.each(each)('of the %s is the same every time, in colours that both themes have', (id, layout) => {
    const everything: Partial<BayFrame> = {
      condenserDirt: 1,
      glass: { bubbles: 0.5, streaked: false },
      stains: { condenser: 1, 'port-a': 1 },
      soap: { at: 'port-a', level: 8 },
      glow: { at: 'condenser', level: 8 },
    };
    const own = ['condenser', 'label', 'compressor', ...layout.ports.map((port) => port.id)];
    for (const target of own.filter((one) => stopsOf(layout).some((stop) => stop.id === one))) {
      const once = drawn(id, target, everything);
      expect(JSON.stringify(once)).toBe(JSON.stringify(drawn(id, target, everything)));
      expect(JSON.stringify(once)).not.toMatch(/NaN|null|Infinity/);
      for (const dark of [false, true]) {
        const palette = paletteOf(dark, layout.paint);
        expect(inks(once).filter((ink) => palette[ink] === undefined)).toEqual([]);
      }
    }
  });
});

describe('a port from near', () => {
  it.each(each)(
    'of the %s tells how wide it is once it is bare, and wears a thread only for R-12',
    (id, layout) => {
      for (const port of layout.ports) {
        const look = { cap: 'missing', strap: false, covered: false } as const;
        const bare = drawn(id, port.id, { ports: { [port.id]: look } });
        expect(texts(bare)).toEqual([`${port.boreMm} mm`]);
        expect(texts(drawn(id, port.id))).toEqual([]);
        expect(inks(bare).filter((ink) => ink === 'zinc-h').length > 2).toBe(
          isThreaded(boreOf(port.boreMm / 1000)),
        );
      }
    },
  );

  it('shows both steps of a coupler on it: the pin on the core lets gas by', () => {
    const hose = { id: 'low', port: 'port-b', route: [], caught: false } as const;
    const at = (open: boolean) => drawn('hatchback', 'port-b', { hoses: [{ ...hose, open }] });
    expect(texts(at(false))).toEqual(['L']);
    const dashes = (drawing: Drawing) =>
      drawing.filter((record) => 'd' in record && record.style?.dash).length;
    expect([dashes(at(false)), dashes(at(true))]).toEqual([0, 2]);
  });
});

describe('states from near', () => {
  it('of the label: all that is printed, nothing where none is left', () => {
    expect(texts(drawn('compact', 'label'))).toEqual([
      'AIR CONDITIONING',
      'Refrigerant',
      'R-134a',
      'Invented.',
    ]);
    const covered = { ...PRINT, look: 'conversion', over: 'CONVERTED TO', heading: 'R-134a' } as const;
    expect(texts(drawn('pickup', 'label', { print: covered }))).toContain('CONVERTED TO');
    expect(texts(drawn('pickup', 'label', { print: { ...PRINT, look: 'none' } }))).not.toContain('R-134a');
  });

  it('of clutch, sight glass and condenser follow what the frame says', () => {
    const clutch = (clutchEngaged: boolean) => texts(drawn('sedan', 'clutch', { clutchEngaged }));
    expect([clutch(false), clutch(true)]).toEqual([['gap'], []]);
    const oiled = (share: number) => drawn('pickup', 'clutch', { stains: { compressor: share } }).length;
    expect(oiled(1)).toBeGreaterThan(oiled(0.25));
    expect(oiled(0.25)).toBeGreaterThan(oiled(0));
    const glass = (bubbles: number, streaked = false) =>
      drawn('hatchback', 'drier', { glass: { bubbles, streaked } }).length;
    expect(glass(0.5)).toBeGreaterThan(glass(0.125));
    expect(glass(0.125)).toBeGreaterThan(glass(0));
    expect(glass(0, true)).toBeGreaterThan(glass(0));
    const dirt = [0, 0.25, 0.5, 1].map(
      (condenserDirt) => drawn('van', 'condenser', { condenserDirt }).length,
    );
    expect([...dirt].sort((a, b) => a - b)).toEqual(dirt);
    expect(dirt[3]).toBeGreaterThan(dirt[1] + 100);
  });

  it.each([
    ['oil', (share: number) => oilPatch('condenser', 0, 0, 26, share)],
    ['foam', (share: number) => soapFoam('condenser', 0, 0, 26, 8 * share)],
    ['glow', (share: number) => dyeGlow('condenser', 0, 0, 26, 8 * share).slice(1)],
  ] as const)('of %s: what there is with little is there with more', (_, mark) => {
    const shares = [0.125, 0.375, 0.625, 1];
    for (const [i, share] of shares.slice(1).entries()) {
      const more = new Set(mark(share).map((record) => JSON.stringify(record)));
      const less = mark(shares[i]).map((record) => JSON.stringify(record));
      expect(more.size).toBeGreaterThanOrEqual(new Set(less).size);
      const kept = less.filter((record) => more.has(record)).length;
      expect(kept / less.length).toBeGreaterThan(0.8);
    }
  });
});
