/**
 * How well a car that lived along fits what was seen: log likelihood, in nats, 0 at best.
 *
 *   reading   -(off / spread)^2 / 2, never further off than a forecast's furthest
 *   look      right, but for one in twenty
 *
 * The spread is half of a forecast's, 2 % of the absolute pressure and 0.8 K, since only the car and its severity may still
 * differ. Estimates, no source.
 */
import { furthest, logOdds } from '../forecast/logOdds';
import { spreadsApart } from '../forecast/spreadsApart';
import type { Seen } from './doubtOf';

/** Of a forecast's spread. */
const FINER = 0.5;

/** `shows` by reading. */
export const fitOf = (seen: readonly Seen[], shows: readonly number[], atmospherePa: number): number =>
  seen.reduce((sum, one, at) => sum + fitOfOne(one, shows[at], atmospherePa), 0);

function fitOfOne({ probe, value }: Seen, shown: number, atmospherePa: number): number {
  if (probe.unit === 'look') return logOdds(probe, value, shown, atmospherePa);
  const off = Math.min(furthest(probe), spreadsApart(probe, value, shown, atmospherePa, 0)) / FINER;
  return -0.5 * off * off;
}
