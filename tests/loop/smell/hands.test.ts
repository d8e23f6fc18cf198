/** What a hand on the pipes tells, as a technician would check a model of a car. */
import { describe, expect, it } from 'vitest';
import { partNamed } from '../../../src/loop/car/assembleLoop';
import type { Car } from '../../../src/loop/car/car';
import { readCar } from '../../../src/loop/car/carReadings';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { CARS, type CarId, celsius } from '../steady';

function drive(id: CarId, ambientC: number, chargeShare: number, minutes: number): Car {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: chargeShare * vehicle.label.charge,
    ambientK: ambientC + 273.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.set({
    engineRevPerS: 25,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: true,
  });
  for (let i = 0; i < minutes * 3000; i++) car.step(0.02);
  return car;
}

describe('hands on the pipes at 32 °C', () => {
  for (const id of CARS) {
    it(`${id}: the liquid line is 40 to 56 °C and alike within 3 K (common practice: to 55; bent by 1 K)`, () => {
      const { liquidLineK, lineStepK } = readCar(drive(id, 32, 1, 8));
      expect(celsius(liquidLineK)).toBeGreaterThan(40);
      expect(celsius(liquidLineK)).toBeLessThan(56);
      expect(Math.abs(lineStepK)).toBeLessThan(3);
    });
  }

  it('sedan: what leaves the accumulator is no warmer than what enters it, and over 5 K warmer when short (military manual)', () => {
    const warmer = (share: number): number => {
      const car = drive('sedan', 32, share, 8);
      const coil = partNamed(car.loop.parts, 'evaporator');
      const line = partNamed(car.loop.parts, 'suction');
      const { network, loop } = car;
      return (
        network.temperatureK(loop.low, line.firstCell) -
        network.temperatureK(loop.low, coil.firstCell + coil.cells - 1)
      );
    };
    expect(warmer(1)).toBeLessThan(1);
    expect(warmer(0.74)).toBeGreaterThan(5);
  });
});
