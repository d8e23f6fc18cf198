/**
 * Runs the jobs of proofs: here, or in threads that are this same command line. What comes back is JSON text, wherever it was
 * made, so that one thread and many, and the cache, give the same bytes.
 */
import { Worker } from 'node:worker_threads';
import { type ProofJob, runJob } from '../../prover/jobs';
import { livesGhosts } from '../../prover/livesGhosts';
import { scenarios } from '../../session/scenario/library';
import type { Scenario } from '../../session/scenario/scenario';
import { toJson } from '../io';
import type { Asked, Told } from './serveJobs';

export interface JobRunner {
  run(scenario: Scenario, job: ProofJob): Promise<string>;
  close(): Promise<void>;
}

export const jobRunner = (threads: number): JobRunner => (threads > 1 ? inThreads(threads) : here());

const here = (): JobRunner => ({
  run: async (scenario, job) => toJson(runJob(scenario, job, scenarios), 0),
  close: async () => {},
});

interface Waiting {
  readonly asked: Asked;
  /** The only one that may do it; null for anybody. */
  readonly by: Worker | null;
  readonly done: (body: string) => void;
  readonly failed: (error: Error) => void;
}

/**
 * Jobs go to whoever is free, first come, first served; those that live the same ghost cars go to one thread, which keeps
 * them, so that no thread lives again what another has.
 */
function inThreads(threads: number): JobRunner {
  const queue: Waiting[] = [];
  const workers = Array.from({ length: threads }, () => new Worker(new URL(import.meta.url)));
  const free = [...workers];
  const busy = new Map<Worker, Waiting>();
  const keeper = new Map<string, Worker>();
  const keeperOf = (hash: string): Worker => {
    const known = keeper.get(hash) ?? workers[keeper.size % threads];
    keeper.set(hash, known);
    return known;
  };
  const hand = (): void => {
    for (const worker of free.splice(0)) {
      const at = queue.findIndex(({ by }) => by === null || by === worker);
      if (at < 0) {
        free.push(worker);
        continue;
      }
      const [waiting] = queue.splice(at, 1);
      busy.set(worker, waiting);
      worker.postMessage(waiting.asked);
    }
  };
  for (const worker of workers) {
    worker.on('message', ({ body, failure }: Told) => {
      const waiting = busy.get(worker);
      busy.delete(worker);
      free.push(worker);
      if (failure === undefined) waiting?.done(body);
      else waiting?.failed(new Error(failure));
      hand();
    });
    worker.on('error', (error) => busy.get(worker)?.failed(error as Error));
  }
  return {
    run: ({ data, hash }, job) =>
      new Promise((done, failed) => {
        const by = livesGhosts(job) ? keeperOf(hash) : null;
        queue.push({ asked: { data, job }, by, done, failed });
        hand();
      }),
    async close() {
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}
