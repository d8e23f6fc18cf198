import { describe, expect, it } from 'vitest';
import { createCar } from '../../../src/loop/car/createCar';
import { refrigerantsOf } from '../../../src/loop/car/refrigerantsOf';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { expansionValveLift, LIFT_AT_STOP, SPRING_PA_PER_K } from '../../../src/loop/expansionValve';
import { REFRIGERANT_IDS, refrigerant } from '../../../src/refrigerant/fluids';

const EVAPORATOR_PA = 350_000;
const MAXIMUM_PA = 620_000;

/** Lift at a superheat, static 3.5 K, gradient 4.5 K. */
function lift(superheatK: number, evaporatorPa = EVAPORATOR_PA): number {
  const fluid = refrigerant('R-134a');
  const bulbPa = fluid.saturationPressurePa(fluid.saturationTemperatureK(evaporatorPa) + superheatK);
  return expansionValveLift(bulbPa, evaporatorPa, 3.5, 4.5, MAXIMUM_PA, SPRING_PA_PER_K['R-134a']);
}

describe('expansion valve', () => {
  it('stays shut below its static superheat and is about at its rating a gradient above it, with a quarter in reserve', () => {
    expect(lift(3)).toBe(0);
    expect(lift(7)).toBeCloseTo(1, 1);
    expect(lift(12)).toBe(LIFT_AT_STOP);
  });

  it('opens within the printed superheats of 3.3 to 4.5 K (a military cooling unit; two suppliers of one car)', () => {
    expect(lift(3.3)).toBeLessThan(0.05);
    expect(lift(4.5)).toBeGreaterThan(0.1);
  });

  it('closes again above its maximum operating pressure', () => {
    expect(lift(8, 600_000)).toBeLessThan(lift(8));
    expect(lift(12, 700_000)).toBe(0);
  });
});

describe('bulb and spring', () => {
  for (const fluid of REFRIGERANT_IDS) {
    it(`${fluid}: the spring's pascals a kelvin are its saturation line's at 3.5 °C`, () => {
      const at = refrigerant(fluid).saturationPressurePa;
      expect(SPRING_PA_PER_K[fluid] / (at(277.15) - at(276.15))).toBeCloseTo(1, 2);
    });

    it(`are the car's own, whatever is in the loop (${fluid})`, () => {
      const vehicle = vehicleOf('hatchback');
      const car = createCar(vehicle, {
        refrigerant: fluid,
        chargeKg: 1.2 * vehicle.label.charge,
        ambientK: 303.15,
        relativeHumidity: 0.5,
        stood: 'equalised',
      });
      car.set({ engineRevPerS: 15, airConditioningOn: true, blowerStep: 2 });
      const { network, loop } = car;
      const shown = (): number => network.linkMemory(loop.metering, 1);
      for (let i = 0; i < 3000; i++) car.step(0.02);
      let evaporatorPa = 0;
      // it may be shut or wide open at any one moment: the first one between after a minute
      for (let i = 0; i < 9000 && !(i > 0 && shown() > 0.1 && shown() < 0.9); i++) {
        evaporatorPa = network.pressurePa(loop.low);
        car.step(0.02);
      }
      const bulbPa = refrigerant('R-134a').saturationPressurePa(network.linkMemory(loop.metering, 0));
      const lift = (bulbPa - evaporatorPa - 3.5 * 11_700) / (4.5 * 11_700);
      expect(shown()).toBeGreaterThan(0.1);
      expect(shown()).toBeLessThan(0.9);
      expect(shown()).toBeCloseTo(lift, 3);
    });
  }

  it('name the tables a car needs, each once', () => {
    expect(refrigerantsOf(vehicleOf('hatchback'), 'R-12')).toEqual(['R-12', 'R-134a']);
    expect(refrigerantsOf(vehicleOf('hatchback'), 'R-134a')).toEqual(['R-134a']);
    expect(refrigerantsOf(vehicleOf('sedan'), 'R-12')).toEqual(['R-12']);
  });
});
