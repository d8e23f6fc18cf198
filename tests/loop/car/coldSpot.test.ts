import { describe, expect, it } from 'vitest';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { placeWallK } from '../../../src/plant/linePlaces';

type CarId = 'hatchback' | 'sedan';

function carOf(id: CarId, chargeShare = 1) {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: chargeShare * vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
  });
  car.set({ blowerStep: 4, windowsOpen: true, recirculated: true });
  return car;
}

function run(car: ReturnType<typeof carOf>, seconds: number): void {
  for (let i = 0; i < 50 * seconds; i++) car.step(0.02);
}

const start = (car: ReturnType<typeof carOf>): void =>
  car.set({ engineRevPerS: 25, airConditioningOn: true });

describe('the cold spot (physics of a flashing restriction; a step over 3 K is the sign, common practice)', () => {
  it('is not there on a sound car: the liquid line is uniform within 3 K from end to end', () => {
    for (const id of ['hatchback', 'sedan'] as const) {
      const car = carOf(id);
      start(car);
      run(car, 120);
      expect(Math.abs(placeWallK(car, 'liquid') - placeWallK(car, 'liquid-end'))).toBeLessThan(3);
    }
  });

  it('lies at the end of the line where the line is restricted, and all along it where the drier is', () => {
    const line = carOf('hatchback');
    line.edit('liquidLineHealth', 0.03);
    const drier = carOf('hatchback');
    drier.edit('drierHealth', 0.03);
    for (const car of [line, drier]) {
      start(car);
      run(car, 120);
    }
    expect(placeWallK(line, 'drier') - placeWallK(line, 'liquid')).toBeLessThan(3);
    expect(placeWallK(line, 'liquid') - placeWallK(line, 'liquid-end')).toBeGreaterThan(5);
    expect(placeWallK(drier, 'drier') - placeWallK(drier, 'liquid')).toBeGreaterThan(5);
    expect(placeWallK(drier, 'liquid')).toBeCloseTo(placeWallK(drier, 'liquid-end'), 6);
    // the same narrow place in either is the same loop
    expect(drier.network.pressurePa(drier.loop.low)).toBeCloseTo(line.network.pressurePa(line.loop.low), 0);
  });

  it('is as cold as what boils between restriction and valve, and goes away at rest', () => {
    const car = carOf('hatchback');
    car.edit('liquidLineHealth', 0.02);
    start(car);
    run(car, 120);
    const { network, loop } = car;
    const before = network.meter(loop.metering, 'beforePa');
    expect(before).toBeGreaterThan(network.pressurePa(loop.low));
    expect(before).toBeLessThan(0.8 * network.pressurePa(loop.high));
    car.set({ engineRevPerS: 0, airConditioningOn: false });
    run(car, 600);
    expect(placeWallK(car, 'liquid') - placeWallK(car, 'liquid-end')).toBeLessThan(3);
  });

  it('does nothing while most of the line is open, and starves the coil when hardly any is', () => {
    const low = (share: number): number => {
      const car = carOf('hatchback');
      car.edit('liquidLineHealth', share);
      start(car);
      run(car, 90);
      return car.network.pressurePa(car.loop.low);
    };
    const sound = low(1);
    expect(Math.abs(low(0.5) - sound)).toBeLessThan(5_000);
    expect(low(0.006)).toBeLessThan(0.5 * sound);
  });
});

describe('two narrow places in series', () => {
  it('pass less than either, and the colder spot lies behind both', () => {
    const car = carOf('hatchback');
    car.edit('liquidLineHealth', 0.05);
    car.edit('drierHealth', 0.05);
    start(car);
    run(car, 120);
    const behindDrier = placeWallK(car, 'liquid');
    expect(placeWallK(car, 'drier')).toBeGreaterThan(behindDrier);
    expect(behindDrier).toBeGreaterThan(placeWallK(car, 'liquid-end'));
  });

  for (const [state, chargeShare] of [
    ['almost empty', 0.002],
    ['full', 1.3],
  ] as const) {
    it(`hold in a car that is ${state}: standing, running and run backwards to rest, books and all`, () => {
      for (const id of ['hatchback', 'sedan'] as const) {
        const car = carOf(id, chargeShare);
        car.edit('liquidLineHealth', 0.01);
        car.edit('drierHealth', 0.02);
        const { network, loop } = car;
        run(car, 5);
        start(car);
        run(car, 30);
        car.set({ engineRevPerS: 0, airConditioningOn: false });
        run(car, 30);
        // the low side hotter than the high one
        for (let cell = 0; cell < network.cellCount(loop.low); cell++) network.setWall(loop.low, cell, 330);
        run(car, 30);
        const before = network.meter(loop.metering, 'beforePa');
        expect(before).toBeGreaterThan(0);
        expect(network.state.every((number) => Number.isFinite(number))).toBe(true);
        const { massErrorRelative, energyErrorRelative } = network.books();
        expect(massErrorRelative).toBeLessThan(1e-12);
        expect(energyErrorRelative).toBeLessThan(1e-10);
      }
    });
  }
});
