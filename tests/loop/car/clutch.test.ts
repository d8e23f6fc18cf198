import { describe, expect, it } from 'vitest';
import type { Car } from '../../../src/loop/car/car';
import type { EditName } from '../../../src/loop/car/carNumbers';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { CARS, type CarId } from '../steady';

function running(id: CarId, edits: Partial<Record<EditName, number>>, ambientK = 305.15): Car {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  for (const [name, value] of Object.entries(edits)) car.edit(name as EditName, value);
  car.set({
    engineRevPerS: 25,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: true,
  });
  return car;
}

function runFor(car: Car, seconds: number): Car {
  for (let i = 0; i < 50 * seconds; i++) car.step(0.02);
  return car;
}

const hubShare = (car: Car): number =>
  car.number('compressorRevPerS') / (25 * (car.vehicle.compressor.pulleyRatio ?? 0));

describe('a clutch that has lost torque', () => {
  for (const id of CARS) {
    it(`${id}: still holds with half of it, and on a hot day slips where on a mild one it does not`, () => {
      expect(hubShare(runFor(running(id, { clutchHealth: 0.5 }), 180))).toBeCloseTo(1, 3);
      const faint = { clutchHealth: 0.3 };
      expect(hubShare(runFor(running(id, faint, 294.15), 60))).toBeCloseTo(1, 3);
      expect(hubShare(runFor(running(id, faint, 313.15), 180))).toBeLessThan(0.8);
    });

    it(`${id}: rubs hot, and what goes into the compressor stands in the books as work`, () => {
      const sound = runFor(running(id, {}), 120);
      const slipping = runFor(running(id, { clutchHealth: 0.22 }), 120);
      expect(slipping.number('clutchFaceK')).toBeGreaterThan(sound.number('clutchFaceK') + 40);
      expect(slipping.network.books().energyErrorRelative).toBeLessThan(1e-10);
      expect(slipping.network.pressurePa(slipping.loop.high)).toBeLessThan(
        0.95 * sound.network.pressurePa(sound.loop.high),
      );
    });
  }
});

describe('a clutch with too little current', () => {
  it('does not pull in under six tenths of the voltage, and lets go under three (common practice, no source)', () => {
    const car = runFor(running('sedan', { clutchCurrent: 0.5 }), 2);
    expect(car.number('clutchIn')).toBe(0);
    expect(car.number('compressorRevPerS')).toBe(0);
    car.edit('clutchCurrent', 0.7);
    expect(hubShare(runFor(car, 2))).toBeCloseTo(1, 3);
    car.edit('clutchCurrent', 0.4);
    expect(hubShare(runFor(car, 2))).toBeCloseTo(1, 3);
    car.edit('clutchCurrent', 0.2);
    expect(runFor(car, 3).number('compressorRevPerS')).toBe(0);
  });
});

describe('a clutch stuck on', () => {
  for (const id of CARS) {
    it(`${id}: turns with nothing asked, and on a mild day takes the coil under freezing, past every switch`, () => {
      const car = running(id, { clutchStuck: 1 }, 294.15);
      car.set({ windowsOpen: false });
      runFor(car, 600);
      const coldest = Math.min(
        ...car.loop.parts
          .filter(({ part }) => part === 'evaporator')
          .flatMap(({ vessel, firstCell, cells }) =>
            Array.from({ length: cells }, (_, i) => car.network.wallTemperatureK(vessel, firstCell + i)),
          ),
      );
      expect(coldest).toBeLessThan(271);
      expect(car.number('clutchIn')).toBe(0);
      expect(hubShare(car)).toBeCloseTo(1, 3);
      car.set({ airConditioningOn: false });
      expect(hubShare(runFor(car, 5))).toBeCloseTo(1, 3);
      car.edit('clutchStuck', 0);
      expect(runFor(car, 5).number('compressorRevPerS')).toBe(0);
    });
  }
});
