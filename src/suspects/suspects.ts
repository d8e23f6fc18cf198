/**
 * Suspects: what the readings taken say about the cause, by Bayes' rule over an ensemble of ghost cars.
 *
 *   P(cause | readings) ~ prior(cause) * product over readings of [mean over its ghosts of the likelihood]
 *
 * The prior stands in `causes.ts`. The mean is taken reading by reading, so a severity between two of the ensemble may lean
 * on either. One cause at a time, unless the ensemble has a pair. No table of likelihoods is kept; every number comes from
 * the model.
 */
import { exp } from '../numerics/exp';
import { ln } from '../numerics/ln';
import type { PlantOptions } from '../plant/buildPlant';
import type { SessionRecord } from '../session/record/record';
import { causesOf, ensembleAt, type GhostSpec, priorsOf } from './causes';
import { expected } from './expectation';
import { buildGhost, type Ghost } from './ghost';
import { logLikelihood, logMean, logSum } from './likelihood';
import { type Observation, observationsOf } from './observation';

/** A number for each cause, in the order of the ensemble. */
export type ByCause = Readonly<Record<string, number>>;

export interface SuspectsAfter {
  readonly seen: Observation;
  /** Mean of what each cause's ghosts would have shown, SI; null where none has anything to read. */
  readonly ghosts: Readonly<Record<string, number | null>>;
  readonly posterior: ByCause;
}

export interface Suspects {
  readonly causes: readonly string[];
  readonly prior: ByCause;
  /** One for each observation, in the order taken. */
  readonly after: readonly SuspectsAfter[];
}

/** `options` are those the session's own plant was built with; hidden faults and charge in them are not looked at. */
export function suspectsOf(
  record: SessionRecord,
  options: PlantOptions,
  ensemble: readonly GhostSpec[] = ensembleAt(options),
): Suspects {
  const observations = observationsOf(record);
  const causes = causesOf(ensemble);
  const witnesses = ensemble.map((spec) => witness(record, observations, buildGhost(options, spec)));
  const priors = priorsOf(causes);
  const logs = priors.map(ln);
  const after = observations.map((seen, at): SuspectsAfter => {
    const ghosts: Record<string, number | null> = {};
    causes.forEach((cause, index) => {
      const own = witnesses.filter(({ spec }) => spec.cause === cause).map(({ told }) => told[at]);
      ghosts[cause] = meanOf(own.map(({ wouldShow }) => wouldShow));
      if (seen.counts) logs[index] += logMean(own.map(({ log }) => log));
    });
    return { seen, ghosts, posterior: byCause(causes, posterior(logs)) };
  });
  return {
    causes,
    prior: byCause(causes, priors),
    after,
  };
}

/** What was believed when `step` steps were done: the last reading's posterior, or the prior. */
export function suspectsAt({ prior, after }: Suspects, step: number): ByCause {
  return after.findLast(({ seen }) => seen.step <= step)?.posterior ?? prior;
}

interface Told {
  readonly wouldShow: number;
  readonly log: number;
}

interface Witness {
  readonly spec: GhostSpec;
  /** One for each observation. */
  readonly told: readonly Told[];
}

/** Lives the session through in one ghost, up to its last observation. */
function witness({ actions }: SessionRecord, observations: readonly Observation[], ghost: Ghost): Witness {
  const told: Told[] = [];
  for (const { number, step, command } of actions) {
    if (told.length === observations.length) break;
    ghost.runTo(step);
    ghost.perform(command);
    const seen = observations[told.length];
    if (seen.action !== number) continue;
    const wouldShow = expected(ghost, seen);
    told.push({ wouldShow, log: logLikelihood(ghost, seen, wouldShow) });
  }
  return { spec: ghost.spec, told };
}

function posterior(logs: readonly number[]): number[] {
  const sum = logSum(logs);
  return logs.map((log) => exp(log - sum));
}

function meanOf(values: readonly number[]): number | null {
  const there = values.filter((value) => !Number.isNaN(value));
  return there.length === 0 ? null : there.reduce((sum, value) => sum + value, 0) / there.length;
}

function byCause(causes: readonly string[], values: readonly number[]): ByCause {
  return Object.fromEntries(causes.map((cause, index) => [cause, values[index]]));
}
