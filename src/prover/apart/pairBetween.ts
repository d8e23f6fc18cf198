/**
 * Two causes as a pair that no test of the bench parts: what parts them best there, and the nearest test that would. Null
 * where their nearest rows are parted.
 */
import type { Pair, TestOf } from '../apartTable';
import type { Probe } from '../forecast/probe';
import { decisionOf } from '../know/decisionOf';
import { nearestRows } from './nearestRows';
import type { Row } from './rowOf';
import { shownOf } from './shownOf';
import { PARTED } from './spreadsTogether';

export interface Tried {
  readonly probes: readonly Probe[];
  /** By probe. */
  readonly tests: readonly TestOf[];
  /** Parts and lines of this car. */
  readonly known: ReadonlySet<string>;
  readonly atmospherePa: number;
}

/** Rows of one cause each. */
export function pairBetween(
  { probes, tests, known, atmospherePa }: Tried,
  those: readonly Row[],
  others: readonly Row[],
): Pair | null {
  const onBench = tests.map((test) => test.isOnBench);
  const nearest = nearestRows(probes, onBench, [those, others], atmospherePa);
  if (nearest === null || nearest.together >= PARTED) return null;
  const { a, b, spreads } = nearest;
  const best = bestOf(tests, spreads);
  const tells = nearestTest(tests, spreads);
  return {
    a: a.cause,
    b: b.cause,
    decisionDiffers: decisionOf(a.cause, known) !== decisionOf(b.cause, known),
    best: { test: tests[best].id, spreads: spreads[best] },
    wouldTell:
      tells < 0
        ? null
        : {
            test: tests[tells].id,
            tool: tests[tells].tool,
            spreads: spreads[tells],
            shows: [shownOf(a.values[tells]), shownOf(b.values[tells])],
          },
  };
}

/** Place of what parts best on the bench. */
const bestOf = (tests: readonly TestOf[], spreads: readonly number[]): number =>
  tests.reduce(
    (best, test, at) => (test.isOnBench && (best < 0 || spreads[at] > spreads[best]) ? at : best),
    -1,
  );

/** Place of the cheapest test the bench lacks that parts alone; -1 where there is none. */
const nearestTest = (tests: readonly TestOf[], spreads: readonly number[]): number =>
  tests.reduce((best, test, at) => {
    if (test.isOnBench || spreads[at] < PARTED) return best;
    return best < 0 || test.costMinutes < tests[best].costMinutes ? at : best;
  }, -1);
