import { expect, it } from 'vitest';
import { DETECTOR, heardKgPerM3 } from '../../src/equipment/leakDetector';

/** SAE J1628, by tool manuals: under 5 mm, 25 to 50 mm/s. */
it('hears a leak 2.1 to 4.2 times as well as its class where it is led as it should be', () => {
  const heard = (awayMm: number, paceMmPerS: number): number =>
    heardKgPerM3({ leakKgPerS: 1e-10, awayMm, paceMmPerS, airMPerS: 0.02, isBelow: true });
  const classed = heard(DETECTOR.classMm, DETECTOR.classMmPerS);
  expect(heard(5, 50) / classed).toBeCloseTo(2.1, 1);
  expect(heard(1, 25) / classed).toBeCloseTo(4.2, 1);
});
