/**
 * Runs one car without a bench and says what it did: the model behind `portside loop`. Blower full, air recirculated;
 * `closed` has one person in the cabin. `averageS` is the stretch at the end over which means, extremes and rates are taken.
 */

import { fillingWith, settleFaults } from '../faults/applyFaults';
import { type ActiveFault, purely } from '../faults/fault';
import type { Car } from '../loop/car/car';
import { readCar } from '../loop/car/carReadings';
import { WEAR_OF, type WearCause } from '../loop/car/compressorWear';
import { createCar } from '../loop/car/createCar';
import { hasEngine } from '../loop/car/hasEngine';
import { type VehicleData, vehicleOf } from '../loop/car/vehicles';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import { STEP_S } from './stepTime';

export interface LoopRun {
  readonly vehicle: string;
  /** A car of its own instead of the shipped one of that name. */
  readonly vehicleData?: VehicleData;
  readonly refrigerant: RefrigerantId;
  readonly ambientK: number;
  readonly relativeHumidity: number;
  /** 0: the engine stands. A car without one takes any other number as being ready. */
  readonly engineRevPerS: number;
  readonly durationS: number;
  readonly averageS: number;
  readonly cabin: 'open' | 'closed';
  /** Of the label's, what the oil holds included. */
  readonly chargeShare: number;
  readonly faults: readonly ActiveFault[];
  readonly start: 'equalised' | 'soaked';
  readonly atmospherePa?: number;
  readonly roadSpeedMPerS?: number;
  readonly sunW?: number;
  /** 0.02 but in tests of the integrator. */
  readonly stepS?: number;
}

export interface Spread {
  readonly mean: number;
  readonly min: number;
  readonly max: number;
  readonly last: number;
}

export interface LoopResult {
  readonly highSideGaugePa: Spread;
  readonly lowSideGaugePa: Spread;
  readonly ventK: number;
  readonly superheatK: number;
  readonly subcoolingK: number;
  readonly dischargeK: number;
  readonly suctionK: number;
  readonly liquidLineK: number;
  readonly suctionSuperheatK: number;
  /** Along the liquid line, from behind the condenser to the metering device. */
  readonly lineStepK: number;
  /** Dry air out of the vents. */
  readonly ventFlowKgPerS: number;
  readonly condensingOverAmbientK: number;
  /** The coldest that either side's refrigerant would boil at in that stretch, by its own pressure; for who reads superheat. */
  readonly leastSaturationK: { readonly high: number; readonly low: number };
  readonly cyclesPerMin: number;
  /** Means of the moments at which the compressor turned, as a gauge is read; of all where it never did. */
  readonly running: Readonly<Record<(typeof READ_RUNNING)[number], number>>;
  /** Share of the time that the clutch was in. */
  readonly duty: number;
  readonly capacityW: number;
  readonly compressorW: number;
  readonly liquidToCompressorKg: number;
  /** At the end: hub behind pulley, body of the compressor, and its damage by cause, as shares of what ends in seizure. */
  readonly clutchSlip: number;
  readonly strokeShare: number;
  readonly compressorBodyK: number;
  readonly wear: Readonly<Record<WearCause, number>>;
  readonly massErrorRelative: number;
  readonly energyErrorRelative: number;
  readonly stateHash: string;
}

/** Called once a simulated second, the start included, for traces. */
export type EachSecond = (car: Car, second: number) => void;

const SAMPLE_EVERY_S = 0.1;

/** Throws `RangeError` for an unknown vehicle or fault. */
export function runLoop(run: LoopRun, eachSecond?: EachSecond): LoopResult {
  const car = startCar(run);
  const dt = run.stepS ?? STEP_S;
  const steps = Math.round(run.durationS / dt);
  const from = steps - Math.round(Math.min(run.averageS, run.durationS) / dt);
  const perSecond = Math.round(1 / dt);
  const perSample = Math.max(1, Math.round(SAMPLE_EVERY_S / dt));
  const sums = startSums(car);
  for (let i = 0; i < steps; i++) {
    if (eachSecond && i % perSecond === 0) eachSecond(car, i / perSecond);
    if (i === from) restart(sums, car);
    car.step(dt);
    if (i >= from && (i - from) % perSample === 0) sample(sums, car);
  }
  if (eachSecond) eachSecond(car, steps / perSecond);
  return resultOf(sums, car, (steps - from) * dt);
}

function startCar(run: LoopRun): Car {
  const vehicle = run.vehicleData ?? vehicleOf(run.vehicle);
  const sound = purely(run.refrigerant, run.chargeShare * vehicle.label.charge);
  const filling = fillingWith(run.faults, vehicle, sound);
  const car = createCar(vehicle, {
    ...filling,
    ambientK: run.ambientK,
    relativeHumidity: run.relativeHumidity,
    ...(run.atmospherePa === undefined ? {} : { ambientPressurePa: run.atmospherePa }),
    stood: run.start,
  });
  const cools = run.engineRevPerS > 0;
  const fullBlower = cools ? vehicle.evaporatorAir.steps.length - 1 : 0;
  car.set({
    engineRevPerS: hasEngine(vehicle) ? run.engineRevPerS : 0,
    airConditioningOn: cools,
    blowerStep: fullBlower,
    rearBlowerStep: fullBlower,
    windowsOpen: run.cabin === 'open',
    recirculated: true,
    occupants: run.cabin === 'closed' && cools ? 1 : 0,
    sunW: run.sunW ?? 0,
    roadSpeedMPerS: run.roadSpeedMPerS ?? 0,
  });
  settleFaults(car, run.faults);
  return car;
}

const MEANS = [
  'ventK',
  'superheatK',
  'subcoolingK',
  'dischargeK',
  'suctionK',
  'liquidLineK',
  'suctionSuperheatK',
  'lineStepK',
  'ventFlowKgPerS',
  'capacityW',
  'compressorW',
] as const;

const READ_RUNNING = [
  'lowSideGaugePa',
  'highSideGaugePa',
  'superheatK',
  'subcoolingK',
  'suctionSuperheatK',
  'dischargeK',
  'lineStepK',
] as const;

type Running = Record<(typeof READ_RUNNING)[number], number>;

interface Sums {
  samples: number;
  runningSamples: number;
  readonly running: Running;
  readonly means: Record<(typeof MEANS)[number], number>;
  condensingK: number;
  readonly leastSaturationK: { high: number; low: number };
  readonly high: { sum: number; min: number; max: number };
  readonly low: { sum: number; min: number; max: number };
  cycles: number;
  onS: number;
}

function startSums(car: Car): Sums {
  const means = Object.fromEntries(MEANS.map((name) => [name, 0])) as Sums['means'];
  const spread = (): Sums['high'] => ({
    sum: 0,
    min: Number.POSITIVE_INFINITY,
    max: Number.NEGATIVE_INFINITY,
  });
  const running = Object.fromEntries(READ_RUNNING.map((name) => [name, 0])) as Running;
  const sums: Sums = {
    samples: 0,
    runningSamples: 0,
    running,
    means,
    condensingK: 0,
    leastSaturationK: { high: Number.POSITIVE_INFINITY, low: Number.POSITIVE_INFINITY },
    high: spread(),
    low: spread(),
    cycles: 0,
    onS: 0,
  };
  restart(sums, car);
  return sums;
}

function restart(sums: Sums, car: Car): void {
  sums.cycles = car.number('clutchCycles');
  sums.onS = car.number('clutchOnS');
}

function sample(sums: Sums, car: Car): void {
  const now = readCar(car);
  for (const name of MEANS) sums.means[name] += now[name];
  const [highK, lowK] = [car.loop.high, car.loop.low].map((side) => car.network.saturationTemperatureK(side));
  const { leastSaturationK } = sums;
  leastSaturationK.high = Math.min(leastSaturationK.high, highK);
  leastSaturationK.low = Math.min(leastSaturationK.low, lowK);
  sums.condensingK += highK - car.number('ambientK');
  widen(sums.high, now.highSideGaugePa);
  widen(sums.low, now.lowSideGaugePa);
  sums.samples += 1;
  if (car.number('compressorRevPerS') <= 0) return;
  for (const name of READ_RUNNING) sums.running[name] += now[name];
  sums.runningSamples += 1;
}

function widen(spread: Sums['high'], value: number): void {
  spread.sum += value;
  if (value < spread.min) spread.min = value;
  if (value > spread.max) spread.max = value;
}

/** The end may fall between two samples; it belongs to the extremes all the same. */
function spreadOf({ sum, min, max }: Sums['high'], samples: number, last: number): Spread {
  return { mean: sum / samples, min: Math.min(min, last), max: Math.max(max, last), last };
}

function resultOf(sums: Sums, car: Car, averagedS: number): LoopResult {
  const { samples, means, high, low, running, runningSamples } = sums;
  const last = readCar(car);
  const books = car.network.books();
  const mean = (name: (typeof MEANS)[number]): number => means[name] / samples;
  const whole: Running = {
    lowSideGaugePa: low.sum / samples,
    highSideGaugePa: high.sum / samples,
    superheatK: mean('superheatK'),
    subcoolingK: mean('subcoolingK'),
    suctionSuperheatK: mean('suctionSuperheatK'),
    dischargeK: mean('dischargeK'),
    lineStepK: mean('lineStepK'),
  };
  for (const name of READ_RUNNING) running[name] /= runningSamples;
  return {
    highSideGaugePa: spreadOf(high, samples, last.highSideGaugePa),
    lowSideGaugePa: spreadOf(low, samples, last.lowSideGaugePa),
    ventK: mean('ventK'),
    superheatK: mean('superheatK'),
    subcoolingK: mean('subcoolingK'),
    dischargeK: mean('dischargeK'),
    suctionK: mean('suctionK'),
    liquidLineK: mean('liquidLineK'),
    suctionSuperheatK: mean('suctionSuperheatK'),
    lineStepK: mean('lineStepK'),
    ventFlowKgPerS: mean('ventFlowKgPerS'),
    condensingOverAmbientK: sums.condensingK / samples,
    leastSaturationK: sums.leastSaturationK,
    cyclesPerMin: ((car.number('clutchCycles') - sums.cycles) * 60) / averagedS,
    // a sum of steps ends a rounding over the stretch
    duty: Math.min(1, (car.number('clutchOnS') - sums.onS) / averagedS),
    capacityW: mean('capacityW'),
    compressorW: mean('compressorW'),
    running: runningSamples > 0 ? running : whole,
    liquidToCompressorKg: last.liquidToCompressorKg,
    clutchSlip: car.number('clutchSlip'),
    strokeShare: car.number('strokeShare'),
    compressorBodyK: car.network.wallTemperatureK(car.loop.low, car.network.cellCount(car.loop.low) - 1),
    wear: {
      slug: car.number(WEAR_OF.slug),
      heat: car.number(WEAR_OF.heat),
      dry: car.number(WEAR_OF.dry),
      vacuum: car.number(WEAR_OF.vacuum),
    },
    massErrorRelative: books.massErrorRelative,
    energyErrorRelative: books.energyErrorRelative,
    stateHash: car.network.stateHash(),
  };
}
