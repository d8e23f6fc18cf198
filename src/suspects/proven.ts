/**
 * How far a claim is proven: the share of all suspects that hold what is claimed. What no reading tells apart counts as one:
 * a loop that is short and one that leaks, wherever.
 */
import { faultIds, faultOf } from '../faults/registry';
import { causesIn } from './causes';

/** From here a cause is proven: common practice, no source. */
export const PROVEN = 0.8;

/** A loop that is short, whatever it went out by. */
export const SHORT = 'low-charge';
const LEAK = 'leak';

export function provenShare(
  suspects: readonly string[],
  shares: readonly number[],
  claimed: readonly string[],
): number {
  const wanted = claimed.map(asRead);
  return suspects.reduce((sum, suspect, at) => {
    const held = causesIn(suspect).map(asRead);
    return wanted.length > 0 && wanted.every((cause) => held.includes(cause)) ? sum + shares[at] : sum;
  }, 0);
}

/** Whether the place of it is found by searching, not by reading. */
export const isFoundBySearch = (cause: string): boolean =>
  faultIds.includes(cause) && faultOf(cause).toldBy === 'search';

/** A loop that is short, and one that leaks anywhere, are one to any reading. */
export const readsAsShort = (cause: string): boolean =>
  cause === SHORT || cause === LEAK || isFoundBySearch(cause);

const asRead = (cause: string): string => (readsAsShort(cause) ? SHORT : cause);
