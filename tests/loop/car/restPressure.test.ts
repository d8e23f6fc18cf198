import { describe, expect, it } from 'vitest';
import { refrigerant } from '../../../src/refrigerant/fluids';
import bands from '../../reference/loop/pressureBands.json';
import { CARS, psi, steady } from '../steady';

const ATMOSPHERE_PA = 101_325;
const STANDING = { rpm: 0, minutes: 30, averageS: 10, stepS: 0.1 } as const;

describe('a car that has stood', () => {
  for (const car of CARS) {
    for (const [ambientC, bar] of bands.staticPressure.rows) {
      it(`${car} at ${ambientC} degC shows saturation pressure on both sides within 1 % (printed table of static pressure: ${bar} bar)`, () => {
        const { highSideGaugePa, lowSideGaugePa } = steady(car, {
          ambientC,
          rpm: 0,
          minutes: 20,
          averageS: 10,
        });
        const saturation = refrigerant('R-134a').saturationPressurePa(ambientC + 273.15);
        for (const side of [highSideGaugePa.last, lowSideGaugePa.last]) {
          expect(Math.abs((side + ATMOSPHERE_PA) / saturation - 1)).toBeLessThan(0.01);
          expect(Math.abs(side / (bar * 1e5) - 1)).toBeLessThan(0.03);
        }
      });
    }
  }

  // computed from saturation at 30 °C: 97 psi whatever the charge, as long as liquid is left
  for (const chargeShare of [0.25, 0.6, 1, 1.2]) {
    it(`sedan with ${chargeShare} of its charge shows 97 psi at 30 °C: the needle is blind to it`, () => {
      const { highSideGaugePa, lowSideGaugePa } = steady('sedan', { ...STANDING, ambientC: 30, chargeShare });
      expect(Math.abs(psi(highSideGaugePa.last) - 97)).toBeLessThan(2);
      expect(Math.abs(psi(lowSideGaugePa.last) - 97)).toBeLessThan(2);
    });
  }

  it('shows less only when no liquid is left', () => {
    const { highSideGaugePa } = steady('sedan', { ...STANDING, ambientC: 30, chargeShare: 0.12 });
    expect(psi(highSideGaugePa.last)).toBeLessThan(80);
    expect(psi(highSideGaugePa.last)).toBeGreaterThan(30);
  });

  it('reads by its own atmosphere: the gauge shows more where the air is thinner', () => {
    const high = steady('sedan', { rpm: 0, minutes: 2, averageS: 10, ambientC: 30, atmospherePa: 83_500 });
    const sea = steady('sedan', { rpm: 0, minutes: 2, averageS: 10, ambientC: 30 });
    expect(psi(high.highSideGaugePa.last - sea.highSideGaugePa.last)).toBeCloseTo(2.6, 1);
  });
});
