import { describe, expect, it } from 'vitest';
import { fuzzLoop } from '../../../src/loop/fuzz/fuzzLoop';
import { electric, heldByTheCar, withOwnValve } from '../../support/otherCompressors';
import { rearCar } from '../../support/rearCar';

/** Each alone, so that none is left out by the draw. */
const OTHERS = {
  'variable, its own valve': withOwnValve('hatchback'),
  'variable, held by the car': heldByTheCar('sedan'),
  electric: electric('hatchback'),
  'rear valve': rearCar('expansion-valve'),
  'rear tube': rearCar('orifice-tube'),
} as const;

describe('random states', () => {
  it('over 200,000 steps give no number that cannot be', () => {
    const report = fuzzLoop(200_000, 1);
    expect(report.finding).toBeNull();
    expect(report.steps).toBe(200_000);
    expect(report.edits).toBeGreaterThan(3000);
  });

  for (const [name, vehicle] of Object.entries(OTHERS)) {
    it(`${name}: over 20,000 steps give no number that cannot be`, () => {
      const { finding, steps } = fuzzLoop(20_000, 3, [vehicle]);
      expect(finding).toBeNull();
      expect(steps).toBe(20_000);
    });
  }

  // seeds that once ended in a negative mass, a number that was none, or a cell hotter than an engine
  for (const seed of [90_770, 180_077, 250_031, 894_000]) {
    it(`stay possible for seed ${seed}`, () => {
      expect(fuzzLoop(5000, seed).finding).toBeNull();
    });
  }

  it('come back alike from the same seed', () => {
    expect(fuzzLoop(2000, 5)).toEqual(fuzzLoop(2000, 5));
  });
});
