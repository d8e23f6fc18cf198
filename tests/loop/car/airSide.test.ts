import { describe, expect, it } from 'vitest';
import type { Car } from '../../../src/loop/car/car';
import { AT, type EditName, FROST } from '../../../src/loop/car/carNumbers';
import { createCar } from '../../../src/loop/car/createCar';
import { stepFans } from '../../../src/loop/car/fans';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { CARS, type CarId, psi, steady } from '../steady';

function running(id: CarId, edits: Partial<Record<EditName, number>> = {}, ambientPressurePa = 101_325): Car {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    ambientPressurePa,
    stood: 'equalised',
  });
  car.set({
    engineRevPerS: 25,
    airConditioningOn: true,
    blowerStep: 4,
    windowsOpen: true,
    recirculated: true,
  });
  for (const [name, value] of Object.entries(edits)) car.edit(name as EditName, value);
  return car;
}

function run(car: Car, seconds: number): Car {
  for (let i = 0; i < seconds * 50; i++) car.step(0.02);
  return car;
}

const highPa = ({ network, loop }: Car): number => network.pressurePa(loop.high) - 101_325;

describe('thin air', () => {
  // 1,600 m: 83.5 kPa
  it('carries less through fans and blower, by its pressure, and the head is higher for it', () => {
    const sea = run(running('sedan'), 300);
    const high = run(running('sedan', {}, 83_500), 300);
    for (const flow of ['condenserFlow', 'coilFlow'] as const)
      expect(high.number(flow) / sea.number(flow)).toBeCloseTo(83_500 / 101_325, 6);
    expect(highPa(high)).toBeGreaterThan(highPa(sea) + 50_000);
  });
});

describe('what stops the air over the coil', () => {
  it('multiplies: filter, dirt and a slow blower together', () => {
    const car = run(running('hatchback', { filterHealth: 0.5, coilAirHealth: 0.8, blowerHealth: 0.9 }), 1);
    expect(car.number('coilFlow')).toBeCloseTo(0.36 * 0.14, 6);
  });

  it('dirt on the coil also takes from its conductance, a filter only air', () => {
    const dirty = run(running('sedan', { coilAirHealth: 0.5 }), 200);
    const filtered = run(running('sedan', { filterHealth: 0.5 }), 200);
    expect(dirty.number('coilFlow')).toBeCloseTo(filtered.number('coilFlow'), 6);
    expect(dirty.number('coilHeatW')).toBeLessThan(filtered.number('coilHeatW') - 10);
  });
});

describe('a fan that comes on late', () => {
  it('stands until the head is well over that of a fan that runs, but under the switch, and lets go once the head has fallen', () => {
    const car = running('sedan', { fanLatePa: 7e5 });
    let [on, off] = [0, 0];
    for (let i = 0; i < 400 * 50 && off === 0; i++) {
      const before = car.number('fanWanted0');
      car.step(0.02);
      const now = car.number('fanWanted0');
      if (now > before) on = highPa(car);
      if (now < before) off = highPa(car);
    }
    expect(off).toBeGreaterThan(0);
    expect(on).toBeGreaterThan(1.5e6);
    expect(on).toBeLessThan(vehicleOf('sedan').switches.high.opens);
    expect(on - off).toBeGreaterThan(1e5);
  });
});

describe('a fan that comes on only just late', () => {
  it('does next to nothing, and does it too where the high side stands under the atmosphere', () => {
    const idling = (fanLatePa: number): Car => {
      const car = running('sedan', { fanLatePa });
      car.set({ engineRevPerS: 15 });
      return run(car, 120);
    };
    const sound = idling(0);
    expect(Math.abs(highPa(idling(1200)) / highPa(sound) - 1)).toBeLessThan(0.01);
    const { reserve } = sound.network;
    reserve[AT.fanLatePa] = 1200;
    stepFans(reserve, sound.vehicle.condenserAir.fans, true, -1e5, 0.02);
    expect(reserve[AT.fanWanted0]).toBe(1);
  });
});

describe('a switch with its set points moved', () => {
  it('lets go and comes back by as much more', () => {
    const car = running('sedan', { lowSwitchShiftPa: 1.5e5 });
    const { opens } = vehicleOf('sedan').switches.low;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 120 * 50; i++) {
      car.step(0.02);
      least = Math.min(least, car.number('feltLowPa'));
    }
    expect(car.number('clutchCycles')).toBeGreaterThan(5);
    expect(Math.abs(least - (opens + 1.5e5))).toBeLessThan(25_000);
  });
});

describe('a coil that is let freeze on a mild day', () => {
  for (const id of CARS) {
    it(`${id}: grows frost until the air falls off (service text on evaporators)`, () => {
      const mild = { ambientC: 27, cabin: 'closed', minutes: 25 } as const;
      const sound = steady(id, mild);
      const iced = steady(id, { ...mild, faults: [{ id: 'coil-iced', severity: 1 }] });
      expect(iced.lowSideGaugePa.mean).toBeLessThan(sound.lowSideGaugePa.mean - 50_000);
      expect(iced.ventFlowKgPerS).toBeLessThan(0.8 * sound.ventFlowKgPerS);
      expect(psi(iced.lowSideGaugePa.mean)).toBeLessThan(22);
    });
  }

  it('thaws on stopping: the frost is gone in half an hour and the air is back', () => {
    const car = running('hatchback');
    const { reserve } = car.network;
    for (let i = 0; i < 8; i++) reserve[FROST + i] = 0.05;
    run(car, 1);
    expect(car.number('coilFlow')).toBeLessThan(0.075);
    car.set({ engineRevPerS: 0, airConditioningOn: false });
    run(car, 1800);
    for (let i = 0; i < 8; i++) expect(reserve[FROST + i]).toBeLessThan(0.001);
    expect(car.number('coilFlow')).toBeCloseTo(0.14, 3);
  });
});

describe('a temperature door that leaks', () => {
  it('warms the vents by its share of the heat of the coolant, and leaves coil and gauges as they were', () => {
    const car = run(running('hatchback', { doorLeak: 0.3 }), 600);
    const sound = run(running('hatchback'), 600);
    const coil = car.number('coilOutletK');
    expect(Math.abs(coil - sound.number('coilOutletK'))).toBeLessThan(1);
    const mixed = coil + 0.3 * 0.8 * (car.number('engineK') - coil);
    expect(car.number('ventK')).toBeCloseTo(mixed + 0.1 * (car.number('interiorK') - mixed), 1);
    expect(car.number('ventK') - coil).toBeGreaterThan(10);
    expect(Math.abs(highPa(car) / highPa(sound) - 1)).toBeLessThan(0.02);
  });
});
