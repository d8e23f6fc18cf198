import { describe, expect, it } from 'vitest';
import { txvStuckOpen } from '../../../src/faults/txvStuckOpen';
import type { Car, CarStart } from '../../../src/loop/car/car';
import { AT, type EditName } from '../../../src/loop/car/carNumbers';
import { WEAR_CAUSES, WEAR_OF, type WearCause, wearOf } from '../../../src/loop/car/compressorWear';
import { createCar } from '../../../src/loop/car/createCar';
import { type VehicleData, vehicleOf } from '../../../src/loop/car/vehicles';
import { withoutCutOut } from '../../support/otherCompressors';
import { CARS } from '../steady';

interface Asked {
  readonly edits?: Partial<Record<EditName, number>>;
  readonly start?: Partial<CarStart>;
  readonly chargeShare?: number;
  readonly rpm?: number;
}

function running(
  vehicle: VehicleData,
  { edits = {}, start = {}, chargeShare = 1, rpm = 1500 }: Asked = {},
): Car {
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: chargeShare * vehicle.label.charge,
    ambientK: 305.15,
    relativeHumidity: 0.5,
    stood: 'equalised',
    ...start,
  });
  for (const [name, value] of Object.entries(edits)) car.edit(name as EditName, value);
  car.set({
    engineRevPerS: rpm / 60,
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

/** Only what is not nothing. */
const wearBy = (car: Car): Partial<Record<WearCause, number>> =>
  Object.fromEntries(
    WEAR_CAUSES.map((cause) => [cause, car.number(WEAR_OF[cause])] as const).filter(([, wear]) => wear > 0),
  );

describe('a sound car', () => {
  for (const id of CARS) {
    it(`${id}: gathers no damage over an hour of cold and hot starts, idling, cycling and speed`, () => {
      const days = [
        [285.15, 'equalised'],
        [312.15, 'soaked'],
      ] as const;
      for (const [ambientK, stood] of days) {
        const car = running(vehicleOf(id), { start: { ambientK, stood }, rpm: 900 });
        runFor(car, 300);
        car.set({ windowsOpen: false, engineRevPerS: 50 });
        runFor(car, 300);
        for (const standingS of [90, 600]) {
          car.set({ engineRevPerS: 0 });
          runFor(car, standingS);
          car.set({ engineRevPerS: 25 });
          runFor(car, 120);
        }
        expect(wearBy(car)).toEqual({});
      }
    });
  }
});

describe('an orifice tube on a mild day with the cabin shut', () => {
  it('lets thin liquid through in every cycle, a kilogram in ten minutes, and that does no harm', () => {
    const car = running(vehicleOf('sedan'), { start: { ambientK: 289.15 }, rpm: 900 });
    car.set({ windowsOpen: false });
    runFor(car, 600);
    expect(car.number('clutchCycles')).toBeGreaterThan(10);
    expect(car.number('sluggedKg')).toBeGreaterThan(0.7);
    expect(wearBy(car)).toEqual({});
  });
});

describe('damage', () => {
  it('goes on by the kilogram as long as a valve stuck open floods it, whatever the clutch does', () => {
    const vehicle = vehicleOf('hatchback');
    const car = running(vehicle, {
      edits: txvStuckOpen.parameters?.(1, vehicle) ?? {},
      start: { ambientK: 295.15 },
      rpm: 900,
    });
    car.set({ windowsOpen: false });
    const early = runFor(car, 600).number('wearSlug');
    const floodedKg = car.number('sluggedKg');
    runFor(car, 600);
    expect(car.number('sluggedKg') - floodedKg).toBeGreaterThan(2);
    expect(car.number('wearSlug') - early).toBeGreaterThan(0.1);
  });

  it('keeps what stands in it over a stop, and lets it boil off with time', () => {
    const car = running(vehicleOf('sedan'));
    car.network.reserve[AT.slugKg] = 0.14;
    car.set({ engineRevPerS: 0 });
    expect(runFor(car, 20).number('slugKg')).toBeGreaterThan(0.05);
    expect(runFor(car, 60).number('slugKg')).toBe(0);
  });

  it('comes from suction under the atmosphere after two minutes of it, not before (service text: never longer)', () => {
    const car = running(vehicleOf('hatchback'), { edits: { meteringHealth: 0.01 } });
    expect(wearBy(runFor(car, 110))).toEqual({});
    expect(car.number('vacuumS')).toBeGreaterThan(80);
    expect(Object.keys(wearBy(runFor(car, 120)))).toEqual(['vacuum']);
  });

  it('comes from liquid past the first 150 g: a valve stuck open floods it at idle on a mild day', () => {
    const car = running(vehicleOf('hatchback'), {
      edits: { valveLeastLift: 1, meteringArea: 1.12 },
      start: { ambientK: 295.15 },
      rpm: 900,
    });
    car.set({ windowsOpen: false });
    expect(wearBy(runFor(car, 60))).toEqual({});
    expect(Object.keys(wearBy(runFor(car, 360)))).toEqual(['slug']);
    expect(car.number('sluggingKgPerS')).toBeGreaterThan(0.001);
    expect(wearOf(car.network.reserve)).toBeLessThan(0.1);
  });

  it('comes from too little oil', () => {
    const vehicle = vehicleOf('sedan');
    const car = running(vehicle, { start: { extraOilKg: -0.85 * vehicle.compressor.oil } });
    expect(runFor(car, 60).number('wearDry')).toBeGreaterThan(0.02);
  });

  it('comes from heat where nothing protects: no fan, the switch bridged, the clutch stuck; it ends seized', () => {
    const car = running(withoutCutOut(vehicleOf('hatchback')), {
      edits: { fanHealth0: 0, fanHealth1: 0, clutchStuck: 1 },
      rpm: 3000,
    });
    runFor(car, 400);
    expect(car.number('thermalSwitch')).toBe(0);
    expect(car.number('wearHeat')).toBeGreaterThan(0.1);
    runFor(car, 600);
    expect(wearOf(car.network.reserve)).toBe(1);
    expect(car.number('compressorRevPerS')).toBe(0);
    expect(car.number('clutchSlip')).toBe(1);
    expect(car.network.books().energyErrorRelative).toBeLessThan(1e-10);
  });

  it('lowers pumping, and a new compressor is as it was', () => {
    const car = running(vehicleOf('sedan'), { edits: { clutchStuck: 1 } });
    const sound = runFor(car, 300).network.massFlowKgPerS(car.loop.compressor);
    const worn = running(vehicleOf('sedan'), { edits: { clutchStuck: 1 }, start: { extraOilKg: -0.17 } });
    expect(runFor(worn, 900).number('wearDry')).toBeGreaterThan(0.4);
    expect(worn.network.massFlowKgPerS(worn.loop.compressor)).toBeLessThan(0.95 * sound);
    worn.renew('compressor');
    expect(wearBy(worn)).toEqual({});
  });
});

describe('thermal protection', () => {
  for (const id of CARS) {
    it(`${id}: without a fan and with the high-pressure switch bridged it stops the compressor before heat does damage`, () => {
      const car = running(withoutCutOut(vehicleOf(id)), {
        edits: { fanHealth0: 0, fanHealth1: 0 },
        rpm: 3000,
      });
      let trips = 0;
      let was = 1;
      for (let i = 0; i < 15_000; i++) {
        car.step(0.02);
        const now = car.number('thermalSwitch');
        if (now < was) trips += 1;
        was = now;
      }
      expect(trips).toBeGreaterThan(0);
      expect(car.number('wearHeat')).toBe(0);
    });
  }
});

describe('discharge gas in starved flow', () => {
  for (const refrigerant of ['R-134a', 'R-1234yf'] as const) {
    it(`${refrigerant}: stays under 150 °C over ten minutes with the metering device nearly shut, and the body warms`, () => {
      const car = running(vehicleOf('hatchback'), {
        edits: { meteringHealth: 0.05, clutchStuck: 1 },
        start: { refrigerant },
        rpm: 3000,
      });
      let hottest = 0;
      for (let s = 0; s < 600; s++) {
        runFor(car, 1);
        hottest = Math.max(hottest, car.network.temperatureK(car.loop.high, 0));
      }
      const { network, loop } = car;
      expect(hottest).toBeLessThan(423);
      expect(network.wallTemperatureK(loop.low, network.cellCount(loop.low) - 1)).toBeGreaterThan(340);
      expect(network.books().energyErrorRelative).toBeLessThan(1e-10);
    });
  }
});
