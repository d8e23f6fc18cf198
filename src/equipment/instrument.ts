/**
 * An instrument passes the truth on through its own lag, offset, range and resolution:
 *
 *   lagged' = lagged + (truth - lagged) (1 - e^(-dt/lag)),   reading = step * round(clamp(lagged + offset) / step)
 *
 * The offset is drawn once from a key (seed, instrument), so connecting in another order changes nobody's error.
 */

import { exp } from '../numerics/exp';
import { keyedNormal } from '../numerics/keyedRandom';

export interface InstrumentSpec {
  readonly id: string;
  readonly minimum: number;
  readonly maximum: number;
  readonly resolution: number;
  readonly lagS: number;
  /** Standard deviation of the fixed error, cut at twice itself. */
  readonly offsetSpread: number;
}

export interface Instrument extends InstrumentSpec {
  readonly offset: number;
  /** Share of the way to the truth covered in one step. */
  readonly approach: number;
}

const CUT = 2;

/** `seed` null: without error of its own. */
export function makeInstrument(spec: InstrumentSpec, seed: number | null, dtS: number): Instrument {
  const { id, minimum, maximum, resolution, lagS, offsetSpread } = spec;
  const offset = seed === null ? 0 : deviate(id, seed) * offsetSpread;
  const approach = lagS > 0 ? 1 - exp(-dtS / lagS) : 1;
  return { id, minimum, maximum, resolution, lagS, offsetSpread, offset, approach };
}

function deviate(id: string, seed: number): number {
  return Math.max(-CUT, Math.min(CUT, keyedNormal(seed, 'instrument offset', id, 0)));
}

/** The lagged value after one step; starts at the truth when there was none. */
export function follow(instrument: Instrument, lagged: number, truth: number): number {
  if (Number.isNaN(truth)) return Number.NaN;
  return Number.isNaN(lagged) ? truth : lagged + (truth - lagged) * instrument.approach;
}

/** A needle on its lower stop within this share of its range reads its lowest mark; farther under, nothing [guess]. */
const FOOT_SHARE = 0.015;

/** Whether what it feels is over its range or well under it: what it shows then is its stop and no reading. */
export function isAtStop(instrument: Instrument, lagged: number, trim = 0): boolean {
  const { minimum, maximum } = instrument;
  const value = lagged + instrument.offset - trim;
  return value > maximum || value < minimum - FOOT_SHARE * (maximum - minimum);
}

/** What the instrument shows for a lagged value; `trim` is what zeroing has taken off. NaN stays NaN. */
export function shown(instrument: Instrument, lagged: number, trim = 0): number {
  const value = lagged + instrument.offset - trim;
  const held = Math.max(instrument.minimum, Math.min(instrument.maximum, value));
  const { resolution } = instrument;
  // for a step below 1 the division by its whole inverse gives the nearest decimal, 0.414 and not 0.41400000000000003
  return resolution < 1
    ? Math.round(held / resolution) / Math.round(1 / resolution)
    : resolution * Math.round(held / resolution);
}
