import { describe, expect, it } from 'vitest';
import { hashFloats, hashText } from '../../src/numerics/hash';

describe('hashes', () => {
  it('are 16 hex digits and depend on every bit, order and length', () => {
    const base = Float64Array.of(1, 2, 3, 4);
    const seen = new Set([hashFloats(base)]);
    expect(hashFloats(base)).toMatch(/^[0-9a-f]{16}$/);
    for (const other of [
      [1, 2, 3],
      [2, 1, 3, 4],
      [1, 2, 3, 4 + 2 ** -50],
      [1, 2, 3, 4, 0],
      [-0, 0, 0, 0],
      [0, 0, 0, 0],
    ]) {
      seen.add(hashFloats(Float64Array.from(other)));
    }
    expect(seen.size).toBe(7);
  });

  it('take the first numbers of a longer state, wherever it lies in its buffer', () => {
    const state = Float64Array.of(9, 1, 2, 3, 7);
    expect(hashFloats(state.subarray(1), 3)).toBe(hashFloats(Float64Array.of(1, 2, 3)));
  });

  it('count every NaN as one value', () => {
    const odd = new Float64Array(1);
    new Uint32Array(odd.buffer).set([1, 0xfff80001]);
    expect(hashFloats(odd)).toBe(hashFloats(Float64Array.of(Number.NaN)));
  });

  it('of texts do not clash on 20,000 near neighbours', () => {
    const seen = new Set<string>();
    for (let i = 0; i < 20_000; i++) seen.add(hashText(`step ${i}`));
    expect(seen.size).toBe(20_000);
    expect(hashText('')).not.toBe(hashText('\0'));
  });

  it('stay what they were', () => {
    expect(hashFloats(Float64Array.of(1, -2.5, 1e300))).toBe(RECORDED_FLOATS);
    expect(hashText('portside')).toBe(RECORDED_TEXT);
  });
});

const RECORDED_FLOATS = '0d8023bbc5482399';
const RECORDED_TEXT = '5201a583989a3d10';
