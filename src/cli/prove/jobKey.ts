/** Everything that decides what a job finds, but for the prover itself, as one text. */
import type { ProofJob } from '../../prover/jobs';
import { canonicalJson } from '../../session/canonicalJson';
import type { Scenario } from '../../session/scenario/scenario';

const KNOWS_OTHERS = 'another-scenarios-solution';

export function jobKey(
  { data, rules, weights }: Scenario,
  job: ProofJob,
  others: readonly Scenario[],
): string {
  const looksAround = job.kind === 'lazy' && job.player === KNOWS_OTHERS;
  const around = looksAround ? others.map(({ hash }) => hash) : [];
  return canonicalJson({ data, rules, weights, job, around });
}
