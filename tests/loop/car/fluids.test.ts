import { describe, expect, it } from 'vitest';
import { CARS, kPa, steady } from '../steady';

// A maker's retrofit bulletin: high side up to 294 kPa higher, vent up to 2 K warmer, low side the same.
const MOST_HIGH_RISE_KPA = 294;
const MOST_VENT_RISE_K = 2;
const LOW_WITHIN_KPA = 25;
const RETROFIT_SHARE = 0.85;

describe('another refrigerant in the same car', () => {
  for (const car of CARS) {
    it(`${car}: R-134a at 85 % of the R-12 it held raises the high side and little else (maker's retrofit bulletin)`, () => {
      const before = steady(car, { refrigerant: 'R-12', chargeShare: 1 / RETROFIT_SHARE });
      const after = steady(car);
      const rise = kPa(after.highSideGaugePa.mean - before.highSideGaugePa.mean);
      expect(rise).toBeGreaterThan(0);
      expect(rise).toBeLessThan(MOST_HIGH_RISE_KPA);
      expect(after.ventK - before.ventK).toBeLessThan(MOST_VENT_RISE_K);
      expect(Math.abs(kPa(after.lowSideGaugePa.mean - before.lowSideGaugePa.mean))).toBeLessThan(
        LOW_WITHIN_KPA,
      );
    });

    it(`${car}: R-1234yf cools within a fifth of R-134a, with cooler gas (bench studies: up to 14 % less, 6.5 K cooler)`, () => {
      const yf = steady(car, { refrigerant: 'R-1234yf', chargeShare: 1 });
      const plain = steady(car);
      expect(yf.capacityW / plain.capacityW).toBeGreaterThan(0.8);
      expect(yf.dischargeK).toBeLessThan(plain.dischargeK);
      expect(yf.massErrorRelative).toBeLessThan(1e-12);
    });
  }
});
