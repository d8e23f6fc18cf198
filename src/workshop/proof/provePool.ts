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
  /** What is being done now, by each who works on it. */
  readonly now: readonly ProofJob[];
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
    let known = partsKnown(request, before, jobs.length);
    const tellRound = (done: number, now: readonly ProofJob[]): void =>
      tell({ done: before + done, now, ...known });
    /** In the first bay each result lets fewer parts follow, or as many. */
    const lower = async (prover: Prover, done: readonly JobResult[]): Promise<void> => {
      if (!known.isMost || done.length === jobs.length) return;
      const { later } = await asked(prover, { type: 'most', done }, 'most');
      known = { ...known, of: Math.min(known.of, jobs.length + later) };
    };
    results.push(...(await allDone(provers, jobs, tellRound, lower)));
  }
  const { proof } = await asked(first, { type: 'proof', results }, 'proof');
  await kept.keep(key, proof);
  return proof;
}

async function allDone(
  provers: readonly Prover[],
  jobs: readonly ProofJob[],
  tell: (done: number, now: readonly ProofJob[]) => void,
  lower: (prover: Prover, done: readonly JobResult[]) => Promise<void>,
): Promise<JobResult[]> {
  const results: JobResult[] = new Array(jobs.length);
  const waiting = jobs.map((job, at) => ({ job, at }));
  const take = (prover: Prover) => {
    const at = waiting.findIndex(({ job }) => prover === provers[0] || !livesGhosts(job));
    return at < 0 ? undefined : waiting.splice(at, 1)[0];
  };
  const running = new Map<Prover, ProofJob>();
  const done: JobResult[] = [];
  const say = (): void => tell(done.length, [...running.values()]);
  const work = async (prover: Prover): Promise<void> => {
    for (let next = take(prover); next; next = take(prover)) {
      running.set(prover, next.job);
      say();
      const { result } = await asked(prover, { type: 'job', job: next.job }, 'result');
      results[next.at] = result;
      done.push(result);
      running.delete(prover);
      say();
      await lower(prover, [...done]);
    }
    say();
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
