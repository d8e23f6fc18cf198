import { describe, expect, it } from 'vitest';
import { follow, makeInstrument, shown } from '../../src/equipment/instrument';

const SPEC = { id: 'scale', minimum: 0, maximum: 50, resolution: 0.001, lagS: 0.5, offsetSpread: 0 };

describe('an instrument', () => {
  it('covers 1 - 1/e of a step in its lag', () => {
    const scale = makeInstrument(SPEC, 1, 0.02);
    let lagged = 0;
    for (let i = 0; i < 25; i++) lagged = follow(scale, lagged, 1);
    expect(lagged).toBeCloseTo(1 - Math.exp(-1), 6);
  });

  it('shows whole steps of its resolution, and no further than its stops', () => {
    const scale = makeInstrument(SPEC, 1, 0.02);
    expect(shown(scale, 0.41449)).toBe(0.414);
    expect(shown(scale, 77)).toBe(50);
    expect(shown(scale, -3)).toBe(0);
  });

  it('shows nothing where there is nothing, and starts at the truth when there is', () => {
    const scale = makeInstrument(SPEC, 1, 0.02);
    expect(follow(scale, 3, Number.NaN)).toBeNaN();
    expect(follow(scale, Number.NaN, 2)).toBe(2);
    expect(shown(scale, Number.NaN)).toBeNaN();
  });

  it('has an error of its own, the same for the same key and never over twice its spread', () => {
    const spec = { ...SPEC, offsetSpread: 0.01 };
    const offsets = Array.from({ length: 400 }, (_, seed) => makeInstrument(spec, seed, 0.02).offset);
    expect(makeInstrument(spec, 7, 0.02).offset).toBe(offsets[7]);
    expect(new Set(offsets).size).toBeGreaterThan(300);
    expect(Math.max(...offsets.map(Math.abs))).toBeLessThanOrEqual(0.02);
    const mean = offsets.reduce((sum, x) => sum + x, 0) / offsets.length;
    expect(Math.abs(mean)).toBeLessThan(0.002);
  });
});
