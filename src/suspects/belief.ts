/**
 * What is believed of each cause, and what a trial could tell. Of a trial it is known what each ghost would show.
 *
 *   after a trial:  log belief(cause) += sum over readings of ln mean over its ghosts of the likelihood
 *   information:    doubt now - mean doubt left, each ghost in turn being the car and showing what it would
 *   doubt:          - sum of p ln p
 *
 * A ghost that was given up has a weight of nothing and is not asked.
 */
import { exp } from '../numerics/exp';
import { ln } from '../numerics/ln';
import { causesOf, type GhostSpec, priorsOf } from './causes';
import type { Ghost } from './ghost';
import { logLikelihood, logMean, logSum } from './likelihood';
import type { Observation } from './observation';

/** What each ghost of the ensemble shows at each observation of a trial; by ghost, then by observation. */
export type Shows = readonly (readonly number[])[];

export interface Bench {
  readonly causes: readonly string[];
  /** By ghost, the place of its cause. */
  readonly causeAt: readonly number[];
  /** By cause, the places of its ghosts. */
  readonly ghostsOf: readonly (readonly number[])[];
  /** One ghost, for its instruments and its weather, which are everyone's. */
  readonly any: Ghost;
}

export function benchOf(ensemble: readonly GhostSpec[], any: Ghost): Bench {
  const causes = causesOf(ensemble);
  return {
    causes,
    causeAt: ensemble.map(({ cause }) => causes.indexOf(cause)),
    ghostsOf: causes.map((cause) => ensemble.flatMap((spec, ghost) => (spec.cause === cause ? [ghost] : []))),
    any,
  };
}

/** Logarithms, not normed. */
export type Belief = readonly number[];

export const firstBelief = ({ causes }: Bench): Belief => priorsOf(causes).map(ln);

export function sharesOf(belief: Belief): readonly number[] {
  const sum = logSum(belief);
  return belief.map((log) => exp(log - sum));
}

/** `values` by observation; NaN where there was nothing to read. */
export function learn(
  bench: Bench,
  belief: Belief,
  seen: readonly Observation[],
  shows: Shows,
  values: readonly number[],
): Belief {
  const there = seen.flatMap((one, at) =>
    Number.isNaN(values[at]) ? [] : [{ at, one: { ...one, value: values[at] } }],
  );
  return belief.map((before, cause) => {
    if (before === Number.NEGATIVE_INFINITY) return before;
    return there.reduce((log, { at, one }) => {
      const own = bench.ghostsOf[cause].map((ghost) => logLikelihood(bench.any, one, shows[ghost][at]));
      return log + logMean(own);
    }, before);
  });
}

/** In nats; never below nothing. */
export function information(
  bench: Bench,
  belief: Belief,
  seen: readonly Observation[],
  shows: Shows,
): number {
  const shares = sharesOf(belief);
  let left = 0;
  bench.causeAt.forEach((cause, ghost) => {
    const share = shares[cause];
    if (share === 0) return;
    const among = bench.ghostsOf[cause].length;
    left += (share / among) * doubt(sharesOf(learn(bench, belief, seen, shows, shows[ghost])));
  });
  return Math.max(0, doubt(shares) - left);
}

function doubt(shares: readonly number[]): number {
  return shares.reduce((sum, share) => (share > 0 ? sum - share * ln(share) : sum), 0);
}
