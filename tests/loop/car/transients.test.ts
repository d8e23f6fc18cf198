import { describe, expect, it } from 'vitest';
import type { Car } from '../../../src/loop/car/car';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { refrigerant } from '../../../src/refrigerant/fluids';
import bands from '../../reference/loop/pressureBands.json';
import { CARS, type CarId, celsius, kPa, psi, steady } from '../steady';

const { cyclingSwitch } = bands;

function start(id: CarId, ambientC: number, over: Partial<Parameters<typeof createCar>[1]> = {}): Car {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: ambientC + 273.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
    ...over,
  });
  car.set({
    engineRevPerS: 25,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: true,
  });
  return car;
}

function run(car: Car, seconds: number): void {
  for (let i = 0; i < seconds * 50; i++) car.step(0.02);
}

const low = (car: Car): number => psi(car.network.pressurePa(car.loop.low) - 101_325);
const high = (car: Car): number => psi(car.network.pressurePa(car.loop.high) - 101_325);
const apart = (car: Car): number => Math.abs(high(car) - low(car));

/** Seconds after which `holds` is true, up to `most`. */
function until(car: Car, most: number, holds: () => boolean): number {
  for (let second = 1; second <= most; second++) {
    run(car, 1);
    if (holds()) return second;
  }
  return most + 1;
}

describe('starting', () => {
  for (const id of CARS) {
    it(`${id} from rest at 30 °C: low under 50 psi in 10 s, high over 150 in 20 s, vent falling in 30 s (common practice)`, () => {
      const car = start(id, 30);
      const lowFell = until(car, 10, () => low(car) < 50);
      expect(lowFell).toBeLessThanOrEqual(10);
      expect(lowFell + until(car, 20, () => high(car) > 150)).toBeLessThanOrEqual(20);
      const vent = car.number('ventK');
      expect(vent).toBeLessThan(303.15 - 3);
      run(car, 15);
      expect(car.number('ventK')).toBeLessThan(vent);
    });
  }
});

describe('stopping, key off', () => {
  it('sedan hisses level in 30 to 120 s (vehicle service text, orifice tube)', () => {
    const car = start('sedan', 30);
    run(car, 600);
    car.set({ engineRevPerS: 0, blowerStep: 0 });
    const seconds = until(car, 180, () => apart(car) < 3);
    expect(seconds).toBeGreaterThan(30);
    expect(seconds).toBeLessThan(120);
  });

  it('hatchback falls fast, then is within 10 psi in 3 to 20 minutes (common practice)', () => {
    const car = start('hatchback', 30);
    run(car, 600);
    const before = apart(car);
    car.set({ engineRevPerS: 0, blowerStep: 0 });
    run(car, 60);
    expect(apart(car)).toBeLessThan(0.75 * before);
    const seconds = 60 + until(car, 1400, () => apart(car) < 10);
    expect(seconds).toBeGreaterThan(3 * 60);
    expect(seconds).toBeLessThan(20 * 60);
  });
});

describe('a car left standing in the shade after a hot drive in the sun, 32 °C', () => {
  const AIR_PSI = psi(refrigerant('R-134a').saturationPressurePa(305.15) - 101_325);

  /** The car ten minutes after a quarter of an hour at 72 km/h. */
  function tenMinutesAfter(id: CarId, airConditioningOn: boolean): Car {
    const car = start(id, 32);
    car.set({ engineRevPerS: 30, airConditioningOn, windowsOpen: false, sunW: 700, roadSpeedMPerS: 20 });
    run(car, 900);
    car.set({ engineRevPerS: 0, blowerStep: 0, airConditioningOn: false, roadSpeedMPerS: 0, sunW: 0 });
    run(car, 600);
    return car;
  }

  const over = (car: Car): number => low(car) - AIR_PSI;

  for (const id of CARS) {
    for (const cooling of [false, true]) {
      it(`${id}, cooling ${cooling ? 'on' : 'off'} on the drive: 10 to 40 psi over the air's figure, decaying (common practice)`, () => {
        const car = tenMinutesAfter(id, cooling);
        const ten = over(car);
        expect(ten).toBeGreaterThan(10);
        expect(ten).toBeLessThan(40);
        run(car, 2400);
        expect(over(car)).toBeLessThan(ten - 3);
        expect(over(car)).toBeGreaterThan(3);
      });
    }
  }
});

describe('pull-down after a hot soak', () => {
  for (const id of CARS) {
    it(`${id}: the cabin falls for minutes, the vent first`, () => {
      const car = start(id, 35, { stood: 'soaked' });
      car.set({ windowsOpen: false, occupants: 1, sunW: 700 });
      const cabin = car.number('cabinK');
      expect(celsius(cabin)).toBeGreaterThan(55);
      run(car, 60);
      expect(car.number('ventK')).toBeLessThan(cabin - 25);
      run(car, 240);
      const atFive = car.number('cabinK');
      expect(atFive).toBeLessThan(cabin - 20);
      run(car, 900);
      expect(car.number('cabinK')).toBeLessThan(atFive - 3);
      expect(celsius(car.number('ventK'))).toBeLessThan(13);
    });

    it(`${id}: a soaked start differs from a cool one for minutes, then no more`, () => {
      const cool = start(id, 32);
      const hot = start(id, 32, { stood: 'soaked' });
      const difference = (): number => Math.abs(high(cool) - high(hot));
      run(cool, 30);
      run(hot, 30);
      expect(difference()).toBeGreaterThan(3);
      run(cool, 150);
      run(hot, 150);
      expect(Math.abs(cool.number('interiorK') - hot.number('interiorK'))).toBeGreaterThan(1);
      run(cool, 1200);
      run(hot, 1200);
      expect(difference()).toBeLessThan(1);
    });
  }
});

describe('the cycling clutch of the orifice car', () => {
  it('opens and closes where such switches do, 1 to 6 times a minute on a mild day (five service texts; common practice)', () => {
    const result = steady('sedan', { ambientC: 21, cabin: 'closed', minutes: 15, averageS: 600 });
    expect(result.cyclesPerMin).toBeGreaterThan(1);
    expect(result.cyclesPerMin).toBeLessThan(6);
    expect(kPa(result.lowSideGaugePa.min)).toBeGreaterThan(cyclingSwitch.opens_kPa_gauge[0] - 10);
    expect(kPa(result.lowSideGaugePa.max)).toBeLessThan(cyclingSwitch.closes_kPa_gauge[1] + 10);
  });

  it('cycles more often with less charge, up to 20 a minute, and locks out with hardly any', () => {
    const rate = (chargeShare: number): number =>
      steady('sedan', { ambientC: 27, chargeShare, averageS: 300 }).cyclesPerMin;
    expect(rate(1)).toBe(0);
    expect(rate(0.4)).toBeGreaterThan(rate(0.5));
    expect(rate(0.3)).toBeGreaterThan(8);
    expect(rate(0.3)).toBeLessThan(20);
    expect(steady('sedan', { ambientC: 27, chargeShare: 0.05, averageS: 300 }).duty).toBe(0);
  });

  it('at half charge cycles 8 to 20 times a minute on a warm day, on for less than 5 s (common practice)', () => {
    const half = steady('sedan', { ambientC: 27, chargeShare: 0.5, averageS: 300 });
    expect(half.cyclesPerMin).toBeGreaterThan(8);
    expect(half.cyclesPerMin).toBeLessThan(20);
    expect((60 * half.duty) / half.cyclesPerMin).toBeLessThan(5);
  });

  it('on a mild day takes in thin liquid that its accumulator lets by, never a slug', () => {
    const car = start('sedan', 21);
    car.set({ windowsOpen: false });
    let most = 0;
    for (let second = 0; second < 360; second++) {
      run(car, 1);
      most = Math.max(most, car.number('slugKg'));
    }
    expect(most).toBeLessThan(0.02);
    expect(car.number('wearSlug')).toBe(0);
  });

  it('does not let go at 38 °C with the windows open', () => {
    expect(steady('sedan', { ambientC: 38, relativeHumidity: 0.4 }).cyclesPerMin).toBe(0);
  });
});

describe('a dead fan', () => {
  for (const id of CARS) {
    it(`${id} at idle, 32 °C: the switch lets go at 410 to 450 psi within 3 minutes (service texts), well again at 50 km/h`, () => {
      const car = start(id, 32);
      car.set({ engineRevPerS: 800 / 60 });
      car.edit('fanHealth0', 0);
      car.edit('fanHealth1', 0);
      let felt = 0;
      for (let i = 0; i < 180 * 50 && car.number('highSwitch') === 1; i++) {
        felt = high(car);
        car.step(0.02);
      }
      expect(car.number('highSwitch')).toBe(0);
      expect(felt).toBeGreaterThan(410);
      expect(felt).toBeLessThan(450);
      car.set({ engineRevPerS: 30, roadSpeedMPerS: 50 / 3.6 });
      run(car, 300);
      expect(high(car)).toBeLessThan(240);
      expect(high(car)).toBeGreaterThan(150);
    });

    it(`${id}: a mist on the hot condenser takes more than 40 psi off in a minute (common practice)`, () => {
      const car = start(id, 32);
      car.edit('condenserAirHealth', 0.4);
      run(car, 300);
      const before = high(car);
      car.set({ sprayKgPerS: 0.02 });
      run(car, 60);
      expect(before - high(car)).toBeGreaterThan(40);
    });
  }
});
