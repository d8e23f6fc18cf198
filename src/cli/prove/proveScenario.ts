/** The proof of one scenario: its jobs, out of the cache or run, put together in their own order. */
import { type JobResult, jobsOf } from '../../prover/jobs';
import { type PartsKnown, partsKnown } from '../../prover/partsKnown';
import type { Proof, ProofRequest } from '../../prover/proof';
import { proofOf } from '../../prover/proofOf';
import { scenarios } from '../../session/scenario/library';
import type { Scenario } from '../../session/scenario/scenario';
import type { JobCache } from './jobCache';
import { jobKey } from './jobKey';
import type { JobRunner } from './jobRunner';

export interface Prover {
  readonly runner: JobRunner;
  readonly cache: JobCache;
  /** After each job: of this scenario, how many are done of those known by now. */
  readonly onDone: (id: string, done: number, known: PartsKnown) => void;
}

export async function proveScenario(
  scenario: Scenario,
  request: ProofRequest,
  { runner, cache, onDone }: Prover,
): Promise<Proof> {
  const results: JobResult[] = [];
  let done = 0;
  for (;;) {
    const jobs = jobsOf(request, results);
    if (jobs.length === 0) return proofOf(scenario, request, results);
    const known = partsKnown(request, results.length, jobs.length);
    const found = jobs.map(async (job): Promise<JobResult> => {
      const key = jobKey(scenario, job, scenarios);
      const kept = cache.get(key);
      const body = kept ?? (await runner.run(scenario, job));
      if (kept === null) cache.put(key, body);
      onDone(scenario.data.id, ++done, known);
      return JSON.parse(body) as JobResult;
    });
    results.push(...(await Promise.all(found)));
  }
}
