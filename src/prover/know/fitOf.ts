/**
 * How well a car that lived along fits what was seen: log likelihood, in nats, 0 at best.
 *
 *   reading   -(off / spread)^2 / 2 up to four spreads, a quarter of a nat for each further one, 10 nats at most
 *   look      right, but for one in twenty
 *
 * The spread of what was watched is half of a forecast's, 2 % of the absolute pressure and 0.8 K, since only the car and its
 * severity may still differ; what was taken out of the loop is as a forecast has it, and an identifier counts up to twelve
 * spreads. Beyond four something was misread or never lived: it still says which severity is nearer, and no one needle is
 * the end of a car. Estimates, no source.
 */
import { furthest, logOdds } from '../forecast/logOdds';
import { spreadsApart } from '../forecast/spreadsApart';
import type { Seen } from './doubtOf';

/** Of a forecast's spread. */
const FINER = 0.5;
/** Further off than it is normal: nats for each spread, and at most. */
const [NATS_A_SPREAD, MOST_BEYOND_NATS] = [0.25, 2] as const;
const NORMAL_TO = furthest({ tool: 'gauge-set' });
/** Nats that one reading speaks against a car at most, but for an identifier's. */
export const WORST_READING = 0.5 * NORMAL_TO * NORMAL_TO + MOST_BEYOND_NATS;

/** `shows` by reading. */
export const fitOf = (seen: readonly Seen[], shows: readonly number[], atmospherePa: number): number =>
  seen.reduce((sum, one, at) => sum + fitOfOne(one, shows[at], atmospherePa), 0);

function fitOfOne({ probe, value, steps }: Seen, shown: number, atmospherePa: number): number {
  if (probe.unit === 'look') return logOdds(probe, value, shown, atmospherePa);
  const apart = spreadsApart(probe, value, shown, atmospherePa, 0);
  const off = steps.length > 0 ? apart / FINER : apart;
  const normal = Math.min(off, furthest(probe));
  return -(0.5 * normal * normal + Math.min(MOST_BEYOND_NATS, NATS_A_SPREAD * (off - normal)));
}
