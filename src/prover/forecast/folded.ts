/**
 * Seconds of watching as one value. A needle is read in the middle of where it goes, or by how far it goes; what turns
 * stands (0), turns (1), comes and goes (2) or turns slowly (3); a thing was there at any time (1) or not.
 */
import type { Fold } from './probe';

/** Share of its speed under which a fan is seen to turn slowly: as the bay says it. */
const SLOW_BELOW = 0.8;
/** Of a hub's speed; of how many seconds [guess]. */
const SLIPS_BELOW = 0.95;
const LONG_S = 5;

export function folded(fold: Fold, samples: readonly number[]): number {
  if (samples.length === 0 || samples.some(Number.isNaN)) return Number.NaN;
  const least = Math.min(...samples);
  const most = Math.max(...samples);
  switch (fold) {
    case 'mean':
      return meanOf(samples);
    case 'swing':
      return most - least;
    case 'watch':
      return least > 0 ? 1 : most > 0 ? 2 : 0;
    case 'fan':
      if (least === 0) return most > 0 ? 2 : 0;
      return meanOf(samples) < SLOW_BELOW ? 3 : 1;
    case 'slips':
      return slips(samples) ? 1 : 0;
    default:
      return most > 0 ? 1 : 0;
  }
}

/** A hub that catches up as it is taken along is none that slips. */
function slips(samples: readonly number[]): boolean {
  const turning = samples.filter((share) => share > 0);
  return turning.length >= LONG_S && meanOf(turning) < SLIPS_BELOW;
}

const meanOf = (samples: readonly number[]): number =>
  samples.reduce((sum, value) => sum + value, 0) / samples.length;
