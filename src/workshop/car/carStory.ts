/**
 * The running car of a scenario and the same car sound: over some minutes in the scenario's own weather, then read at one
 * temperature after another. Comes piece by piece, so that whoever waits can show what there is.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { buildPlant, type PlantOptions } from '../../plant/buildPlant';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { plantOptions } from '../../session/scenario/plantOptions';
import { buildGhost } from '../../suspects/ghost';
import { type CarReading, type CarRun, type CarWay, type RunLength, runCar, waysOf } from './carRun';

export interface CarsAt {
  readonly ambientK: number;
  readonly own: CarReading;
  readonly sound: CarReading;
}

export type CarPiece =
  | {
      readonly kind: 'runs';
      /** How it can be run, and how it was: as asked for, or the usual way where this car knows no such one. */
      readonly ways: readonly CarWay[];
      readonly way: CarWay;
      readonly ambientK: number;
      readonly own: CarRun;
      readonly sound: CarRun;
    }
  | { readonly kind: 'point'; readonly at: CarsAt };

const ZERO_C_K = 273.15;
/** From a mild day to the hottest that is printed for, about where service information has its lines. */
export const BAND_K: readonly number[] = [15, 21, 27, 32, 38, 43].map((c) => ZERO_C_K + c);
const FIRST_SEED = 1;
/** In the job's weather, where it is watched second by second; and at each other temperature. */
const LONG: RunLength = { seconds: 360, watchedS: 120 };
const SHORT: RunLength = { seconds: 180, watchedS: 60 };
/** Pieces that come in all. */
export const PIECES = BAND_K.length + 1;

/** Gives way once a simulated second, with a piece where one is done. */
export function* carStory(data: ScenarioData, wished: CarWay): Generator<CarPiece | undefined, void> {
  const asked = plantOptions(data, FIRST_SEED);
  // what is to be seen is the car with its faults, whenever they begin
  const options = { ...asked, faults: asked.faults.map((fault) => ({ ...fault, onsetStep: 0 })) };
  const { temperatureK } = options.weather;
  const ways = waysOf(data.vehicle);
  const way = ways.includes(wished) ? wished : 'running';
  const runs = yield* bothIn(options, way, LONG);
  yield { kind: 'runs', ways, way, ambientK: temperatureK, ...runs };
  const nearestFirst = [...BAND_K].sort((a, b) => Math.abs(a - temperatureK) - Math.abs(b - temperatureK));
  for (const ambientK of nearestFirst) {
    const there = { ...options, weather: { ...options.weather, temperatureK: ambientK } };
    const { own, sound } = yield* bothIn(there, way, SHORT);
    yield { kind: 'point', at: { ambientK, own: own.reading, sound: sound.reading } };
  }
}

function* bothIn(
  options: PlantOptions,
  way: CarWay,
  length: RunLength,
): Generator<undefined, { readonly own: CarRun; readonly sound: CarRun }> {
  const { vehicleId } = options;
  const sound = buildGhost(options, { cause: NOTHING_WRONG, severity: 0 }).plant;
  return {
    own: yield* silently(runCar(buildPlant(options), vehicleId, way, length)),
    sound: yield* silently(runCar(sound, vehicleId, way, length)),
  };
}

function* silently<Result>(work: Generator<void, Result>): Generator<undefined, Result> {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
    yield undefined;
  }
}
