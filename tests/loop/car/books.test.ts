import { describe, expect, it } from 'vitest';
import type { Car } from '../../../src/loop/car/car';
import { createCar } from '../../../src/loop/car/createCar';
import { vehicleOf } from '../../../src/loop/car/vehicles';
import { runLoop } from '../../../src/plant/runLoop';
import { CARS, type CarId, steady } from '../steady';

const HOURS_S = 7200;

/** Two hours on a mild day with the cabin shut: hundreds of clutch cycles. */
function longRun(vehicle: CarId) {
  let seconds = 0;
  let worst = 0;
  const { label } = vehicleOf(vehicle);
  const result = runLoop(
    {
      vehicle,
      refrigerant: 'R-134a',
      ambientK: 294.15,
      relativeHumidity: 0.5,
      engineRevPerS: 25,
      durationS: HOURS_S,
      averageS: HOURS_S,
      cabin: 'closed',
      chargeShare: 1,
      faults: [],
      start: 'soaked',
    },
    ({ network }) => {
      seconds++;
      const sum = network.vesselSlots().reduce((kg, v) => kg + network.massKg(v, 'refrigerant'), 0);
      worst = Math.max(worst, Math.abs(sum / label.charge - 1));
    },
  );
  return { result, seconds, worst };
}

describe('the books of a car over two hours of cycling', () => {
  for (const car of CARS) {
    it(`${car}: mass within 1e-12, energy within 1e-10 of what turned over, each second's masses sum to the charge`, () => {
      const { result, seconds, worst } = longRun(car);
      expect(seconds).toBe(HOURS_S + 1);
      expect(result.cyclesPerMin * 120).toBeGreaterThan(200);
      expect(result.massErrorRelative).toBeLessThan(1e-12);
      expect(result.energyErrorRelative).toBeLessThan(1e-10);
      expect(worst).toBeLessThan(1e-9);
    });
  }
});

/** Evacuated, filled with air, and as labelled; standing and running. */
const STATES = [
  ['standing as labelled', 1, 0, 0],
  ['standing evacuated', 4e-6, 0, 0],
  ['standing full of air', 4e-6, 0.003, 0],
  ['running evacuated', 4e-6, 0, 25],
  ['running full of air', 4e-6, 0.003, 25],
  ['running with air in the charge', 1, 0.003, 25],
] as const;

describe('the books of a car in every state', () => {
  for (const id of CARS) {
    for (const [state, chargeShare, airKg, engineRevPerS] of STATES) {
      it(`${id}, ${state}: mass within 1e-12 for refrigerant and air, energy within 1e-10`, () => {
        const vehicle = vehicleOf(id);
        const car = createCar(vehicle, {
          refrigerant: 'R-134a',
          chargeKg: chargeShare * vehicle.label.charge,
          airKg,
          ambientK: 303.15,
          relativeHumidity: 0.5,
          stood: 'equalised',
        });
        car.set({ engineRevPerS, airConditioningOn: true, blowerStep: 4 });
        for (let i = 0; i < 3000; i++) {
          car.step(0.02);
          if (i % 100 !== 0) continue;
          const { massErrors, energyErrorRelative } = car.network.books();
          expect(massErrors.refrigerant).toBeLessThan(1e-12);
          expect(massErrors.air).toBeLessThan(1e-12);
          expect(energyErrorRelative).toBeLessThan(1e-10);
        }
      });
    }
  }
});

function startedHot(id: CarId): Car {
  const vehicle = vehicleOf(id);
  const car = createCar(vehicle, {
    refrigerant: 'R-134a',
    chargeKg: vehicle.label.charge,
    ambientK: 308.15,
    relativeHumidity: 0.5,
    stood: 'soaked',
  });
  car.set({ engineRevPerS: 25, airConditioningOn: true, blowerStep: 4, recirculated: true });
  return car;
}

describe('the step', () => {
  for (const car of CARS) {
    it(`${car}: settles alike to 0.5 % between 5 and 50 ms, so with the air side looked at every 20 to 200 ms`, () => {
      const asked = { minutes: 6, averageS: 60 } as const;
      const fine = steady(car, { ...asked, stepS: 0.005 });
      for (const stepS of [0.02, 0.05]) {
        const coarse = steady(car, { ...asked, stepS });
        expect(Math.abs(coarse.highSideGaugePa.mean / fine.highSideGaugePa.mean - 1)).toBeLessThan(0.005);
        expect(Math.abs(coarse.lowSideGaugePa.mean / fine.lowSideGaugePa.mean - 1)).toBeLessThan(0.005);
        expect(Math.abs(coarse.capacityW / fine.capacityW - 1)).toBeLessThan(0.005);
        expect(Math.abs(coarse.ventK - fine.ventK)).toBeLessThan(0.05);
      }
    });

    it(`${car}: pulls a hot cabin down alike, to 0.2 K at the vent and 0.1 K in the cabin, with the air side at 20 to 200 ms`, () => {
      const afterAMinute = (stepS: number): readonly [ventK: number, cabinK: number] => {
        const made = startedHot(car);
        for (let i = 0; i < Math.round(60 / stepS); i++) made.step(stepS);
        return [made.number('ventK'), made.number('cabinK')];
      };
      const [vent, cabin] = afterAMinute(0.005);
      for (const stepS of [0.02, 0.05]) {
        const [coarseVent, coarseCabin] = afterAMinute(stepS);
        expect(Math.abs(coarseVent - vent)).toBeLessThan(0.2);
        expect(Math.abs(coarseCabin - cabin)).toBeLessThan(0.1);
      }
    });

    it(`${car}: cycles alike to 5 % between 20 and 50 ms`, () => {
      const asked = { ambientC: 21, cabin: 'closed', minutes: 30, averageS: 1200 } as const;
      const fine = steady(car, { ...asked, stepS: 0.02 }).cyclesPerMin;
      expect(fine).toBeGreaterThan(1);
      expect(Math.abs(steady(car, { ...asked, stepS: 0.05 }).cyclesPerMin / fine - 1)).toBeLessThan(0.05);
    });
  }
});

describe('the same again', () => {
  it('gives the same bits, and other bits after a hair of difference', () => {
    const asked = { minutes: 2, averageS: 60 } as const;
    const hash = (chargeShare: number): string => steady('sedan', { ...asked, chargeShare }).stateHash;
    const again = runLoop({
      vehicle: 'sedan',
      refrigerant: 'R-134a',
      ambientK: 305.15,
      relativeHumidity: 0.5,
      engineRevPerS: 25,
      durationS: 120,
      averageS: 60,
      cabin: 'open',
      chargeShare: 1,
      faults: [],
      start: 'equalised',
    });
    expect(again.stateHash).toBe(hash(1));
    expect(hash(1 + 1e-9)).not.toBe(hash(1));
  });

  it('goes on from a snapshot in another car as the first one did', () => {
    const make = () => {
      const vehicle = vehicleOf('hatchback');
      const made = createCar(vehicle, {
        refrigerant: 'R-134a',
        chargeKg: vehicle.label.charge,
        ambientK: 303.15,
        relativeHumidity: 0.5,
        stood: 'equalised',
      });
      made.set({ engineRevPerS: 25, airConditioningOn: true, blowerStep: 4 });
      return made;
    };
    const first = make();
    for (let i = 0; i < 1500; i++) first.step(0.02);
    const state = first.network.state.slice();
    const structure = first.network.structure();
    const second = make();
    second.network.restore(structure, state);
    for (let i = 0; i < 1000; i++) {
      first.step(0.02);
      second.step(0.02);
    }
    expect(second.network.stateHash()).toBe(first.network.stateHash());
  });
});
