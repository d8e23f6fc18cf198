/**
 * What is believed of each hypothesis after what was seen, and what a test could tell.
 *
 *   log belief(hypothesis) = ln prior(cause) + ln weight / weights of the cause + sum of the readings' log likelihoods
 *   information            = doubt now - mean doubt left, each ghost in turn being the car
 *   doubt                  = - sum over decisions of p ln p
 *
 * A hypothesis keeps one severity for all readings, which sharpens what `suspects` leaves to lean on either.
 */
import { exp } from '../../numerics/exp';
import { ln } from '../../numerics/ln';
import { priorsOf } from '../../suspects/causes';
import { logSum } from '../../suspects/likelihood';
import { logOdds } from '../forecast/logOdds';
import type { Probe } from '../forecast/probe';
import type { Hypothesis } from './hypotheses';

export interface Seen {
  readonly probe: Probe;
  readonly value: number;
  /** The session's, as it was read there. */
  readonly signal: string;
  /** Steps of the session at which it was looked at, a whole second each; none for dirt and what was taken out of the loop. */
  readonly steps: readonly number[];
}

/** Not normed; minus infinity for what was given up. */
export type Belief = readonly number[];

export function firstBelief(hypotheses: readonly Hypothesis[]): Belief {
  const causes = [...new Set(hypotheses.map(({ cause }) => cause))];
  const priors = priorsOf(causes);
  return hypotheses.map(({ cause, weight }) => {
    const among = hypotheses.reduce((sum, other) => (other.cause === cause ? sum + other.weight : sum), 0);
    return ln((priors[causes.indexOf(cause)] * weight) / among);
  });
}

export function learn(
  hypotheses: readonly Hypothesis[],
  belief: Belief,
  seen: readonly Seen[],
  atmospherePa: number,
): Belief {
  return belief.map((log, at) =>
    log === Number.NEGATIVE_INFINITY
      ? log
      : seen.reduce(
          (sum, { probe, value }) =>
            sum +
            logOdds(probe, value, hypotheses[at].shows(probe), atmospherePa, hypotheses[at].wanders(probe)),
          log,
        ),
  );
}

export function sharesOf(belief: Belief): readonly number[] {
  const sum = logSum(belief);
  return belief.map((log) => exp(log - sum));
}

/** Shares by a name each hypothesis has. */
export function sharesBy(names: readonly string[], shares: readonly number[]): ReadonlyMap<string, number> {
  const by = new Map<string, number>();
  names.forEach((name, at) => void by.set(name, (by.get(name) ?? 0) + shares[at]));
  return by;
}

export const doubt = (shares: Iterable<number>): number =>
  [...shares].reduce((sum, share) => (share > 0 ? sum - share * ln(share) : sum), 0);

/** In nats, never below nothing; ghosts alone are asked. `decisions` by hypothesis. */
export function information(
  hypotheses: readonly Hypothesis[],
  belief: Belief,
  decisions: readonly string[],
  probes: readonly Probe[],
  atmospherePa: number,
): number {
  const asked = hypotheses.flatMap((one, at) =>
    one.isGhost && belief[at] !== Number.NEGATIVE_INFINITY ? [at] : [],
  );
  const names = asked.map((at) => decisions[at]);
  const logs = asked.map((at) => belief[at]);
  const shown = asked.map((at) => probes.map((probe) => hypotheses[at].shows(probe)));
  const wander = asked.map((at) => probes.map((probe) => hypotheses[at].wanders(probe)));
  const shares = sharesOf(logs);
  let left = 0;
  shown.forEach((values, car) => {
    const after = shown.map((other, at) =>
      values.reduce(
        (sum, value, i) =>
          Number.isNaN(value) ? sum : sum + logOdds(probes[i], value, other[i], atmospherePa, wander[at][i]),
        logs[at],
      ),
    );
    left += shares[car] * doubt(sharesBy(names, sharesOf(after)).values());
  });
  return Math.max(0, doubt(sharesBy(names, shares).values()) - left);
}
