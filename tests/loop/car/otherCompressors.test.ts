import { describe, expect, it } from 'vitest';
import { faultsFor } from '../../../src/faults/registry';
import type { Car } from '../../../src/loop/car/car';
import { hasClutch } from '../../../src/loop/car/coolingAsked';
import { createCar } from '../../../src/loop/car/createCar';
import { type VehicleData, vehicleOf } from '../../../src/loop/car/vehicles';
import {
  COIL_SET_POINT_K,
  electric,
  heldByTheCar,
  SUCTION_SET_POINT_PA,
  withOwnValve,
} from '../../support/otherCompressors';
import { CARS } from '../steady';

const SETTLING_S = 300;
const SEEN_S = 60;

function warmDay(vehicle: VehicleData): Car {
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 300.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.set({ airConditioningOn: true, blowerStep: 4, recirculated: true, occupants: 1 });
  return car;
}

interface Seen {
  readonly lowestPa: number;
  readonly highestPa: number;
  readonly coilK: number;
  readonly stroke: number;
  readonly revPerS: number;
  readonly powerW: number;
}

/** Means over a minute, after five at this speed. */
function at(car: Car, rpm: number, windowsOpen = false): Seen {
  car.set({ engineRevPerS: rpm / 60, windowsOpen });
  for (let i = 0; i < 50 * SETTLING_S; i++) car.step(0.02);
  const sums = {
    lowestPa: Number.POSITIVE_INFINITY,
    highestPa: 0,
    coilK: 0,
    stroke: 0,
    revPerS: 0,
    powerW: 0,
  };
  const steps = 50 * SEEN_S;
  for (let i = 0; i < steps; i++) {
    car.step(0.02);
    const pa = car.network.pressurePa(car.loop.low);
    sums.lowestPa = Math.min(sums.lowestPa, pa);
    sums.highestPa = Math.max(sums.highestPa, pa);
    sums.coilK += car.number('controlCoilK') / steps;
    sums.stroke += car.number('strokeShare') / steps;
    sums.revPerS += car.number('compressorRevPerS') / steps;
    sums.powerW += car.network.workW(car.loop.compressor) / steps;
  }
  return sums;
}

function booksHold(car: Car): void {
  const { massErrorRelative, energyErrorRelative } = car.network.books();
  expect(massErrorRelative).toBeLessThan(1e-12);
  expect(energyErrorRelative).toBeLessThan(1e-10);
}

for (const id of CARS) {
  describe(`${id} with a variable compressor and its own valve`, () => {
    const car = warmDay(withOwnValve(id));
    const idle = at(car, 900);
    const brisk = at(car, 3000);
    const loaded = at(car, 3000, true);

    it('holds the low side within 15 kPa of its set point from 900 to 3,000 rpm and under a heavier load, never letting go', () => {
      for (const { lowestPa, highestPa } of [idle, brisk, loaded]) {
        expect(lowestPa).toBeGreaterThan(SUCTION_SET_POINT_PA - 15_000);
        expect(highestPa).toBeLessThan(SUCTION_SET_POINT_PA + (id === 'sedan' ? 25_000 : 15_000));
      }
      expect(car.number('clutchCycles')).toBe(1);
    });

    it('makes less stroke at speed, and more under load', () => {
      expect(brisk.stroke).toBeLessThan(0.6 * idle.stroke);
      expect(loaded.stroke).toBeGreaterThan(1.4 * brisk.stroke);
    });

    it('keeps the books', () => booksHold(car));
  });

  describe(`${id} with a variable compressor that the car controls`, () => {
    const car = warmDay(heldByTheCar(id));
    const idle = at(car, 900);
    const brisk = at(car, 3000);

    it('holds the coil within a kelvin of its set point at both speeds without cycling', () => {
      for (const { coilK } of [idle, brisk]) expect(Math.abs(coilK - COIL_SET_POINT_K)).toBeLessThan(1);
      expect(car.number('clutchCycles')).toBe(0);
    });

    it('goes on turning with the engine, at no stroke and pumping nothing, once nothing is asked', () => {
      car.set({ airConditioningOn: false });
      const off = at(car, 900);
      expect(off.revPerS * 60).toBeCloseTo(900 * (car.vehicle.compressor.pulleyRatio ?? 0), 6);
      expect(off.stroke).toBe(0);
      expect(off.powerW).toBe(0);
      booksHold(car);
    });
  });

  describe(`${id} with an electric compressor`, () => {
    const car = warmDay(electric(id));
    car.set({ engineRevPerS: 0 });
    for (let i = 0; i < 50; i++) car.step(0.02);
    const afterASecond = car.number('compressorRevPerS');
    const standing = at(car, 0);
    const running = at(car, 2000);

    it('starts softly and cools with the engine off, the coil within a kelvin of its set point', () => {
      expect(afterASecond).toBeGreaterThan(0);
      expect(afterASecond).toBeLessThan(0.15 * (car.vehicle.compressor.drive?.most ?? 0));
      expect(standing.powerW).toBeGreaterThan(300);
      expect(Math.abs(standing.coilK - COIL_SET_POINT_K)).toBeLessThan(1);
    });

    it('does not mind how fast the engine turns', () => {
      expect(Math.abs(running.coilK - standing.coilK)).toBeLessThan(0.5);
    });

    it('keeps the books', () => booksHold(car));
  });
}

describe('faults of a clutch', () => {
  const clutchFaults = (car: VehicleData): string[] =>
    faultsFor(car).flatMap(({ id }) => (id.startsWith('clutch-') ? [id] : []));

  it('are where there is a clutch, and nowhere else (technician’s review 1.11)', () => {
    const all = ['clutch-not-engaging', 'clutch-slipping', 'clutch-stuck-on'];
    expect(clutchFaults(vehicleOf('sedan'))).toEqual(all);
    expect(clutchFaults(withOwnValve('sedan'))).toEqual(all);
    expect(clutchFaults(heldByTheCar('sedan'))).toEqual([]);
    expect(clutchFaults(electric('sedan'))).toEqual([]);
    expect(hasClutch(electric('sedan'))).toBe(false);
  });
});
