/**
 * Has a proof made by one prover or several: jobs go to whoever is free, results stand in the order of the jobs, so that
 * the proof is the same however many work on it. What lives ghost cars goes to the first of them, who keeps them.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { JobResult, ProofJob } from '../../prover/jobs';
import { livesGhosts } from '../../prover/livesGhosts';
import { type PartsKnown, partsKnown } from '../../prover/partsKnown';
import type { Proof, ProofRequest } from '../../prover/proof';
import type { FromProver, ToProver } from './proveDesk';

/** Answers one message at a time. */
export type Prover = (message: ToProver) => Promise<FromProver>;

export interface ProvedSoFar extends PartsKnown {
  readonly done: number;
}

export interface KeptProofs {
  find(key: string): Promise<Proof | null>;
  keep(key: string, proof: Proof): Promise<void>;
}

export async function proveWith(
  provers: readonly Prover[],
  data: ScenarioData,
  request: ProofRequest,
  kept: KeptProofs,
  tell: (soFar: ProvedSoFar) => void,
): Promise<Proof> {
  const opened = await Promise.all(
    provers.map((prover) => asked(prover, { type: 'open', data, request }, 'opened')),
  );
  const [{ key }] = opened;
  const found = await kept.find(key);
  if (found) return found;
  const [first] = provers;
  const results: JobResult[] = [];
  for (;;) {
    const { jobs } = await asked(first, { type: 'next', done: results }, 'next');
    if (jobs.length === 0) break;
    const before = results.length;
    const known = partsKnown(request, before, jobs.length);
    const tellRound = (done: number): void => tell({ done: before + done, ...known });
    results.push(...(await allDone(provers, jobs, tellRound)));
  }
  const { proof } = await asked(first, { type: 'proof', results }, 'proof');
  await kept.keep(key, proof);
  return proof;
}

async function allDone(
  provers: readonly Prover[],
  jobs: readonly ProofJob[],
  tell: (done: number) => void,
): Promise<JobResult[]> {
  const results: JobResult[] = new Array(jobs.length);
  const waiting = jobs.map((job, at) => ({ job, at }));
  const take = (prover: Prover) => {
    const at = waiting.findIndex(({ job }) => prover === provers[0] || !livesGhosts(job));
    return at < 0 ? undefined : waiting.splice(at, 1)[0];
  };
  let done = 0;
  tell(0);
  const work = async (prover: Prover): Promise<void> => {
    for (let next = take(prover); next; next = take(prover)) {
      results[next.at] = (await asked(prover, { type: 'job', job: next.job }, 'result')).result;
      done++;
      tell(done);
    }
  };
  await Promise.all(provers.map(work));
  return results;
}

async function asked<Type extends FromProver['type']>(
  prover: Prover,
  message: ToProver,
  type: Type,
): Promise<Extract<FromProver, { type: Type }>> {
  const answer = await prover(message);
  if (answer.type !== type) throw new RangeError(`a prover answered ${answer.type} for ${type}`);
  return answer as Extract<FromProver, { type: Type }>;
}
