/** The two rows of two causes that are nearest to each other over all that the bench can read. */
import type { Probe } from '../forecast/probe';
import type { Row } from './rowOf';
import { rowsApart } from './rowsApart';
import { spreadsTogether } from './spreadsTogether';

export interface Nearest {
  readonly a: Row;
  readonly b: Row;
  /** By probe, whether the bench has it or not. */
  readonly spreads: readonly number[];
  /** As `spreadsTogether`, of what the bench has. */
  readonly together: number;
}

/** Null where one of the two has no row. */
export function nearestRows(
  probes: readonly Probe[],
  onBench: readonly boolean[],
  [those, others]: readonly [readonly Row[], readonly Row[]],
  atmospherePa: number,
): Nearest | null {
  let least: Nearest | null = null;
  for (const a of those) {
    for (const b of others) {
      const spreads = rowsApart(probes, a, b, atmospherePa);
      const together = spreadsTogether(
        probes.filter((_, at) => onBench[at]),
        spreads.filter((_, at) => onBench[at]),
      );
      if (least === null || together < least.together) least = { a, b, spreads, together };
    }
  }
  return least;
}
