import { describe, expect, it } from 'vitest';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { refrigerant } from '../../../src/refrigerant/fluids';
import bands from '../../reference/loop/pressureBands.json';
import { CARS, psi, steady } from '../steady';

const ATMOSPHERE_PA = 101_325;
const STANDING = { rpm: 0, minutes: 10, averageS: 10, stepS: 0.1 } as const;
const SATURATION_PA = refrigerant('R-134a').saturationPressurePa(303.15);
const AIR_GAS_CONSTANT = 287.05;

describe('a car that has stood', () => {
  for (const car of CARS) {
    for (const [ambientC, bar] of bands.staticPressure.rows) {
      it(`${car} at ${ambientC} degC shows saturation pressure on both sides within 1 % (printed table of static pressure: ${bar} bar)`, () => {
        const { highSideGaugePa, lowSideGaugePa } = steady(car, {
          ambientC,
          rpm: 0,
          minutes: 2,
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

  // whatever the charge, as long as liquid is left: 97 psi on the gauge
  for (const car of CARS) {
    for (const chargeShare of [0.2, 0.6, 1, 1.2]) {
      it(`${car} with ${chargeShare} of its charge shows saturation within 1 % on both sides at 30 °C: the needle is blind to it`, () => {
        const { highSideGaugePa, lowSideGaugePa } = steady(car, { ...STANDING, ambientC: 30, chargeShare });
        for (const side of [highSideGaugePa.last, lowSideGaugePa.last]) {
          expect(Math.abs((side + ATMOSPHERE_PA) / SATURATION_PA - 1)).toBeLessThan(0.01);
          expect(Math.abs(psi(side) - 97)).toBeLessThan(2);
        }
      });
    }

    it(`${car} with air in it shows saturation and the air's partial pressure on top, within 10 % of that (Dalton)`, () => {
      const vehicle = vehicleOf(car);
      const airKg = 0.005;
      const ambientK = 303.15;
      const stood = createCar(vehicle, {
        refrigerant: 'R-134a',
        chargeKg: vehicle.label.charge,
        airKg,
        ambientK,
        relativeHumidity: 0.5,
        stood: 'equalised',
      });
      for (let i = 0; i < 3000; i++) stood.step(0.02);
      const { network, loop } = stood;
      const volumeM3 = [...vehicle.highSide.parts, ...vehicle.lowSide.parts].reduce(
        (v, part) => v + part.volume,
        0,
      );
      // what liquid leaves of the volume
      const fluid = refrigerant('R-134a').isobar();
      fluid.setPressurePa(SATURATION_PA);
      const { liquidVolumeM3PerKg, vapourVolumeM3PerKg } = fluid;
      const held = network.massKg(loop.high, 'refrigerant') + network.massKg(loop.low, 'refrigerant');
      const liquidKg =
        (held - volumeM3 / vapourVolumeM3PerKg) / (1 - liquidVolumeM3PerKg / vapourVolumeM3PerKg);
      const partialPa = (airKg * AIR_GAS_CONSTANT * ambientK) / (volumeM3 - liquidKg * liquidVolumeM3PerKg);
      expect(partialPa).toBeGreaterThan(50_000);
      for (const vessel of [loop.high, loop.low])
        expect(Math.abs((network.pressurePa(vessel) - SATURATION_PA) / partialPa - 1)).toBeLessThan(0.1);
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
