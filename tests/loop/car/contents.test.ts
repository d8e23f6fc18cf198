import { describe, expect, it } from 'vitest';
import type { Car, CarStart } from '../../../src/loop/car/car';
import { readCar } from '../../../src/loop/car/carReadings';
import { compressorOilKg } from '../../../src/loop/car/compressorOilKg';
import { createCar } from '../../../src/loop/car/createCar';
import { lowSideOf } from '../../../src/loop/car/lowSide';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { ROOM } from '../../../src/loop/networkTypes';
import { refrigerant } from '../../../src/refrigerant/fluids';
import { CARS, type CarId } from '../steady';

const PA_PER_PSI = 6894.757;
const AIR_GAS_CONSTANT = 287.05;
const AMBIENT_K = 305.15;

function carWith(id: CarId, start: Partial<CarStart> = {}, chargeShare = 1): Car {
  const vehicle = vehicleOf(id);
  return createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: chargeShare * vehicle.label.charge,
    ambientK: AMBIENT_K,
    relativeHumidity: 0.5,
    stood: 'equalised',
    ...start,
  });
}

/** High side over the last two of `minutes`, Pa gauge. */
function running(car: Car, minutes: number): number {
  car.set({
    engineRevPerS: 25,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: true,
  });
  let sum = 0;
  for (let i = 0; i < minutes * 3000; i++) {
    car.step(0.02);
    if (i >= (minutes - 2) * 3000) sum += car.network.pressurePa(car.loop.high) / 6000;
  }
  return sum;
}

function balanced({ network }: Car): void {
  const { massErrors, energyErrorRelative } = network.books();
  for (const [species, error] of Object.entries(massErrors)) expect(error, species).toBeLessThan(1e-12);
  expect(energyErrorRelative).toBeLessThan(1e-10);
}

describe('air', () => {
  for (const id of CARS) {
    it(`${id}: rises the needle at rest by its partial pressure, head by more, gathers on the high side, and stays`, () => {
      const { highSide } = vehicleOf(id);
      const sound = carWith(id);
      const volumeM3 = [...highSide.parts, ...lowSideOf(vehicleOf(id)).parts].reduce(
        (sum, { volume }) => sum + volume,
        0,
      );
      const fluid = refrigerant('R-134a').isobar();
      fluid.setPressurePa(refrigerant('R-134a').saturationPressurePa(AMBIENT_K));
      const total = sound.network.chargeKg(sound.loop.high) + sound.network.chargeKg(sound.loop.low);
      const liquidM3 =
        (total - volumeM3 / fluid.vapourVolumeM3PerKg) /
        (1 / fluid.liquidVolumeM3PerKg - 1 / fluid.vapourVolumeM3PerKg);
      // as much to the litre of vapour as 4 g in 3.2 L (technician's review: 16 psi at rest)
      const airKg = (0.004 * (volumeM3 - liquidM3)) / 3.2e-3;
      const car = carWith(id, { airKg });
      const atRest = car.network.pressurePa(car.loop.high) - sound.network.pressurePa(sound.loop.high);
      expect(Math.abs(atRest / PA_PER_PSI / 16 - 1)).toBeLessThan(0.1);
      expect(Math.abs(((0.004 / 3.2e-3) * AIR_GAS_CONSTANT * AMBIENT_K) / PA_PER_PSI - 16)).toBeLessThan(0.2);
      const head = (running(car, 6) - running(sound, 6)) / PA_PER_PSI;
      // 40 to 60 psi by the review; the hatchback's small condenser goes over: a stated bend
      expect(head).toBeGreaterThan(40);
      expect(head).toBeLessThan(id === 'sedan' ? 60 : 90);
      expect(car.network.massKg(car.loop.high, 'air') / airKg).toBeGreaterThan(0.9);
      expect(readCar(car).ventK).toBeGreaterThan(readCar(sound).ventK);
      balanced(car);
    });
  }
});

describe('oil', () => {
  it('comes back less to a compressor whose car is short (trend of a trade study: 57 % less at 25 % short)', () => {
    const left = [1, 0.7, 0.5].map((share) => {
      const car = carWith('sedan', {}, share);
      running(car, 6);
      balanced(car);
      return compressorOilKg(car.network, car.loop);
    });
    expect(left[0]).toBeGreaterThan(0.5 * vehicleOf('sedan').compressor.oil);
    expect(left[1] / left[0]).toBeLessThan(0.85);
    expect(left[2] / left[0]).toBeLessThan(0.6);
  });

  it('leaves with a leak, in the liquid or as mist in the gas: some tens of grams with a kilogram [guess]', () => {
    const lost = (part: 'liquid' | 'discharge') => {
      const car = carWith('hatchback');
      const found = car.loop.parts.find((one) => one.part === part);
      car.network.addLink({
        kind: 'valve',
        id: 'hole',
        from: { vessel: car.loop.high, cell: found?.firstCell ?? 0, height: 'bulk' },
        to: { vessel: ROOM, cell: 0, height: 'bulk' },
        areaM2: 0.3e-6,
        opening: 1,
      });
      running(car, 2);
      balanced(car);
      const { oil, refrigerant: gas } = car.network.books().ventedKg;
      expect(gas).toBeGreaterThan(0.01);
      return oil / gas;
    };
    for (const part of ['liquid', 'discharge'] as const) {
      const share = lost(part);
      expect(share).toBeGreaterThan(0.01);
      expect(share).toBeLessThan(0.1);
    }
  });

  it('over what belongs in a car lies on its walls and takes from what they carry', () => {
    const sound = carWith('hatchback');
    const over = carWith('hatchback', { extraOilKg: 1.5 * vehicleOf('hatchback').compressor.oil });
    running(sound, 5);
    running(over, 5);
    expect(readCar(over).capacityW).toBeLessThan(readCar(sound).capacityW);
    expect(over.network.massKg(over.loop.high, 'oil')).toBeGreaterThan(
      2 * sound.network.massKg(sound.loop.high, 'oil'),
    );
  });
});

describe('water', () => {
  it('is nothing to a car whose desiccant has room, and goes round once it is full', () => {
    const dry = carWith('hatchback', { waterKg: 0.004 });
    const wet = carWith('hatchback', { waterKg: 0.012 });
    for (const car of [dry, wet]) running(car, 2);
    expect(dry.network.waterMgPerKg(dry.loop.high)).toBe(0);
    expect(wet.network.waterMgPerKg(wet.loop.high)).toBeGreaterThan(3000);
    balanced(wet);
  });
});

describe('a second refrigerant', () => {
  it('goes round with the first and leaves the needle at rest near its line', () => {
    const sound = carWith('sedan');
    const mixed = carWith('sedan', { foreign: { fluid: 'R-12', share: 0.35 } });
    const off = mixed.network.pressurePa(mixed.loop.low) - sound.network.pressurePa(sound.loop.low);
    expect(Math.abs(off / PA_PER_PSI)).toBeLessThan(3);
    running(mixed, 4);
    const { network, loop } = mixed;
    for (const side of [loop.high, loop.low])
      expect(network.massKg(side, 'foreign') / network.chargeKg(side)).toBeCloseTo(0.35, 6);
    balanced(mixed);
  });
});
