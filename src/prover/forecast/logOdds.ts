/**
 * Logarithm of the likelihood of what was seen under what a ghost shows: normal about it, but never further off than four
 * spreads [guess; an identifier twelve], so that no one reading can be the end of a cause; of a look right but for one in
 * twenty, as in `suspects/likelihood`. Where one has something to show and the other has not: as far off as it gets.
 */
import { ln } from '../../numerics/ln';
import type { Probe } from './probe';
import { spreadOf } from './spreadOf';

const FURTHEST = 4;
/** No other fault misleads an identifier [guess]. */
const FURTHEST_OF_GAS = 12;
const MISTAKEN = 0.05;
const RIGHT = ln(1 - MISTAKEN);
const WRONG = ln(MISTAKEN);

/** Spreads. */
export const furthest = ({ tool }: Pick<Probe, 'tool'>): number =>
  tool === 'identifier' ? FURTHEST_OF_GAS : FURTHEST;

export function logOdds(
  probe: Pick<Probe, 'unit' | 'tool'>,
  seen: number,
  shown: number,
  atmospherePa: number,
  wanderK = 0,
): number {
  if (Number.isNaN(shown) && Number.isNaN(seen)) return 0;
  if (probe.unit === 'look') return seen === shown ? RIGHT : WRONG;
  const most = furthest(probe);
  if (Number.isNaN(shown)) return -0.5 * most * most - ln(spreadOf(probe, seen, atmospherePa));
  const spread = spreadOf(probe, shown, atmospherePa, wanderK);
  const off = Math.min(most, Math.abs(seen - shown) / spread);
  return -0.5 * off * off - ln(spread);
}
