import { describe, expect, it } from 'vitest';
import { splineSlopes } from '../../src/numerics/cubicSpline';
import { clamp, interpolateLinear, intervalIndex, lerp, smoothStep } from '../../src/numerics/interpolate';
import { findRoot, RootError } from '../../src/numerics/rootFinding';

describe('interpolation', () => {
  it('runs straight between points and flat beyond', () => {
    const xs = [0, 1, 3];
    const ys = [10, 20, 0];
    expect(interpolateLinear(xs, ys, 0.5)).toBe(15);
    expect(interpolateLinear(xs, ys, 2)).toBe(10);
    expect(interpolateLinear(xs, ys, -5)).toBe(10);
    expect(interpolateLinear(xs, ys, 5)).toBe(0);
    expect(intervalIndex(xs, 1)).toBe(1);
  });

  it('clamps, mixes and steps smoothly', () => {
    expect([clamp(-1, 0, 2), clamp(1, 0, 2), clamp(3, 0, 2)]).toEqual([0, 1, 2]);
    expect(lerp(2, 4, 0.25)).toBe(2.5);
    expect([smoothStep(1, 3, 0), smoothStep(1, 3, 2), smoothStep(1, 3, 4)]).toEqual([0, 0.5, 1]);
  });

  it('gives the slopes of a cubic exactly on uneven points', () => {
    const cubic = (x: number): number => 2 - 3 * x + 0.5 * x ** 2 + 0.25 * x ** 3;
    const slope = (x: number): number => -3 + x + 0.75 * x ** 2;
    const xs = [0, 0.3, 1, 1.2, 2.5, 4];
    const slopes = splineSlopes(xs, xs.map(cubic));
    for (let i = 0; i < xs.length; i++) expect(slopes[i]).toBeCloseTo(slope(xs[i]), 10);
    expect(() => splineSlopes([0, 1, 2], [0, 1, 2])).toThrow(RangeError);
  });
});

describe('root finding', () => {
  it('finds roots of easy and of stiff functions', () => {
    expect(findRoot((x) => x * x - 2, 0, 2, 1e-14)).toBeCloseTo(Math.SQRT2, 13);
    expect(findRoot((x) => x ** 9 - 1e-9, 0, 5, 1e-13)).toBeCloseTo(0.1, 10);
    expect(findRoot((x) => (x < 1 ? -1e-6 : 1e6), -3, 7, 1e-12)).toBeCloseTo(1, 10);
    expect(findRoot((x) => x - 3, 3, 5, 1e-12)).toBe(3);
  });

  it('says so when there is no change of sign', () => {
    expect(() => findRoot((x) => x * x + 1, -1, 1, 1e-9)).toThrow(RootError);
  });
});
