/** The other end of a thread: a job at a time, as plain data; what it found goes back as JSON text. */
import { parentPort } from 'node:worker_threads';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { type ProofJob, runJob } from '../../prover/jobs';
import { scenarios } from '../../session/scenario/library';
import { rubrics } from '../../session/scenario/rubrics';
import { scenarioOf } from '../../session/scenario/scenario';
import { toJson } from '../io';

export interface Asked {
  readonly data: ScenarioData;
  readonly job: ProofJob;
}

export interface Told {
  readonly body: string;
  readonly failure?: string;
}

export function serveJobs(): void {
  parentPort?.on('message', (asked: Asked) => parentPort?.postMessage(answer(asked)));
}

function answer({ data, job }: Asked): Told {
  try {
    return { body: toJson(runJob(scenarioOf(data, rubrics), job, scenarios), 0) };
  } catch (error) {
    return { body: '', failure: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
