/**
 * The deck of plants that random hands are let loose on. Every two faults that can be in one car get their turn on every
 * vehicle, shuffled by the seed; weather, height, contents and bench are drawn. A plant is a pure function of seed and index.
 */
import { TOOL_IDS } from '../../equipment/tools';
import { clash, faultOf, faultsFor } from '../../faults/registry';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { keyedUniform } from '../../numerics/keyedRandom';
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import type { HiddenFault, PlantOptions } from '../buildPlant';
import { PLANT_STATES, type PlantState } from './plantStates';

export type Draw = () => number;

export interface Pair {
  readonly vehicleId: string;
  readonly faults: readonly [string, string];
}

export interface FuzzCase {
  readonly pair: Pair;
  /** The state that it is led back to now and then. */
  readonly aim: PlantState;
  readonly options: PlantOptions;
}

const FLUIDS: readonly RefrigerantId[] = ['R-134a', 'R-134a', 'R-12', 'R-1234yf'];
const PLACES = ['condenser', 'evaporator', 'compressor', 'liquid', 'suction', 'discharge'] as const;
const CAN = { netKg: 0.34, printedTotalKg: 0.37, tareKg: 0.1 };
const LATEST_ONSET_STEP = 1500;
const COLDEST_K = 263.15;
const HOTTEST_K = 323.15;

/** Draws in one order, keyed by seed, plant and purpose. */
export function drawer(seed: number, index: number, purpose: string): Draw {
  let count = 0;
  return () => keyedUniform(seed, purpose, `plant ${index}`, count++);
}

export function pick<T>(of: readonly T[], next: Draw): T {
  return of[Math.floor(next() * of.length)];
}

/** Every two different faults that may meet, on every vehicle, in the order of this seed. */
export function fuzzPairs(seed: number): readonly Pair[] {
  const pairs = vehicleIds.flatMap((vehicleId) => {
    const ids = faultsFor(vehicleOf(vehicleId)).map(({ id }) => id);
    return ids.flatMap((a, i) =>
      ids
        .slice(i + 1)
        .filter((b) => !clash([a, b]))
        .map((b): Pair => ({ vehicleId, faults: [a, b] })),
    );
  });
  for (let i = pairs.length - 1; i > 0; i--) {
    const j = Math.floor(keyedUniform(seed, 'shuffle', '', i) * (i + 1));
    [pairs[i], pairs[j]] = [pairs[j], pairs[i]];
  }
  return pairs;
}

export function fuzzCase(pairs: readonly Pair[], seed: number, index: number): FuzzCase {
  const next = drawer(seed, index, 'case');
  const pair = pairs[index % pairs.length];
  const aim = PLANT_STATES[index % PLANT_STATES.length];
  const labelKg = vehicleOf(pair.vehicleId).label.charge;
  return {
    pair,
    aim,
    options: {
      vehicleId: pair.vehicleId,
      refrigerant: pick(FLUIDS, next),
      chargeKg: labelKg * chargeShare(aim, next),
      start: aim === 'evacuated' || (aim === 'open' && next() < 0.5) ? 'evacuated' : pick(STOOD, next),
      weather: {
        temperatureK:
          aim === 'tripped' ? HOTTEST_K - 10 * next() : COLDEST_K + (HOTTEST_K - COLDEST_K) * next(),
        relativeHumidity: next(),
        pressurePa: 70_000 + 35_000 * next(),
      },
      faults: pair.faults.map((id) => hidden(id, next)),
      place: { kind: 'garage-with-pit', volumeM3: 60, tight: false },
      bench: {
        hoses: ['charging', 'gauge-set'],
        cans: ['can-1', 'can-2'].map((id) => ({ id, ...CAN })),
        tools: TOOL_IDS,
      },
      seed,
    },
  };
}

const STOOD = ['equalised', 'soaked'] as const;

/** Of the label's amount: what makes the low switch let go, what makes the high one, or anything. */
function chargeShare(aim: PlantState, next: Draw): number {
  if (aim === 'cycled-out') return 0.05 + 0.3 * next();
  if (aim === 'tripped') return 1.2 + 0.8 * next();
  return next() < 0.5 ? 1 : 2 * next();
}

function hidden(id: string, next: Draw): HiddenFault {
  const severity = next() < 0.3 ? 1 : next();
  const onsetStep = next() < 0.5 ? 0 : Math.floor(LATEST_ONSET_STEP * next());
  const elsewhere = faultOf(id).usualSite !== undefined && next() < 0.5;
  return { id, severity, onsetStep, ...(elsewhere ? { site: pick(PLACES, next) } : {}) };
}
