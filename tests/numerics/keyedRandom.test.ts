/** Keyed random numbers: a pure function of the key, evenly spread, and normal where it says so. */
import { describe, expect, it } from 'vitest';
import { keyedNormal, keyedUniform } from '../../src/numerics/keyedRandom';

const COUNT = 40_000;
const draws = (of: (i: number) => number): number[] => Array.from({ length: COUNT }, (_, i) => of(i));
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('keyed random numbers', () => {
  it('do not depend on the order of asking', () => {
    const forward = draws((i) => keyedUniform(7, 'noise', 'lowGauge', i));
    const backward = draws((i) => keyedUniform(7, 'noise', 'lowGauge', COUNT - 1 - i)).reverse();
    expect(backward).toEqual(forward);
  });

  it.each([
    ['step', (i: number) => keyedUniform(1, 'offset', 'gauge', i)],
    ['seed', (i: number) => keyedUniform(i, 'offset', 'gauge', 0)],
    ['instrument', (i: number) => keyedUniform(1, 'offset', `gauge${i}`, 0)],
    ['purpose', (i: number) => keyedUniform(1, `offset${i}`, 'gauge', 0)],
  ])('are uniform along the %s', (_name, of) => {
    const values = draws(of);
    expect(values.every((value) => value >= 0 && value < 1)).toBe(true);
    expect(Math.abs(mean(values) - 0.5)).toBeLessThan(0.01);
    expect(Math.abs(mean(values.map((value) => (value - 0.5) ** 2)) - 1 / 12)).toBeLessThan(0.003);
    const bins = new Array<number>(20).fill(0);
    for (const value of values) bins[Math.floor(20 * value)]++;
    const chiSquare = bins.reduce((sum, count) => sum + (count - COUNT / 20) ** 2 / (COUNT / 20), 0);
    expect(chiSquare).toBeLessThan(43.8); // 19 degrees of freedom, one in a thousand
    const pairs = mean(values.slice(1).map((value, i) => (value - 0.5) * (values[i] - 0.5)));
    expect(Math.abs(pairs)).toBeLessThan(0.003);
  });

  it('tell seeds apart that differ only over 32 bits', () => {
    expect(keyedUniform(1, 'a', 'b', 0)).not.toBe(keyedUniform(1 + 2 ** 32, 'a', 'b', 0));
    expect(keyedUniform(1, 'a', 'b', 1)).not.toBe(keyedUniform(1, 'b', 'a', 1));
  });

  it('stay what they were, since saved sessions hold them', () => {
    expect([keyedUniform(7, 'offset', 'lowGauge', 12), keyedNormal(7, 'offset', 'lowGauge', 12)]).toEqual(
      RECORDED,
    );
  });

  it('are normal with mean 0 and deviation 1', () => {
    const values = draws((i) => keyedNormal(3, 'noise', 'scale', i));
    expect(Math.abs(mean(values))).toBeLessThan(0.02);
    expect(Math.abs(mean(values.map((value) => value * value)) - 1)).toBeLessThan(0.03);
    expect(Math.abs(mean(values.map((value) => value ** 3)))).toBeLessThan(0.06);
    expect(values.filter((value) => Math.abs(value) < 1).length / COUNT).toBeCloseTo(0.6827, 1);
  });
});

const RECORDED = [0.9546882727226569, 0.4714485434999358];
