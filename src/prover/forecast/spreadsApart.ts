/**
 * How far apart two ghosts are in one test, in spreads of a reading. Looks that differ count as what is as telling, 19 to 1;
 * where only one has something to read, as the furthest a reading counts.
 */
import { furthest } from './logOdds';
import type { Probe } from './probe';
import { spreadOf } from './spreadOf';

/** sqrt(2 ln 19) */
const LOOKS_DIFFER = 2.427;

/** `wanderK` of the one that wanders more. */
export function spreadsApart(
  probe: Probe,
  a: number,
  b: number,
  atmospherePa: number,
  wanderK: number,
): number {
  if (Number.isNaN(a) || Number.isNaN(b)) return Number.isNaN(a) === Number.isNaN(b) ? 0 : furthest(probe);
  if (probe.unit === 'look') return a === b ? 0 : LOOKS_DIFFER;
  const [one, other] = [a, b].map((shown) => spreadOf(probe, shown, atmospherePa, wanderK));
  const wider = Math.max(one, other);
  return Math.abs(a - b) / wider;
}
