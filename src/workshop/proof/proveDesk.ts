/**
 * A prover's end of the conversation, whatever thread it lives in: holds one scenario, says what is to be done next, does
 * one job at a time, puts the proof together. The page asks and never reckons.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { hashText } from '../../numerics/hash';
import { type JobResult, jobsOf, type ProofJob, runJob } from '../../prover/jobs';
import { mostLater } from '../../prover/mostLater';
import { ownSuspects } from '../../prover/ownSuspects';
import type { Proof, ProofRequest } from '../../prover/proof';
import { proofOf } from '../../prover/proofOf';
import { proverHash } from '../../prover/proverHash';
import { canonicalJson } from '../../session/canonicalJson';
import { engineHash } from '../../session/engineHash';
import { rubrics } from '../../session/scenario/rubrics';
import { type Scenario, scenarioOf } from '../../session/scenario/scenario';

export type ToProver =
  | { readonly type: 'open'; readonly data: ScenarioData; readonly request: ProofRequest }
  | { readonly type: 'next'; readonly done: readonly JobResult[] }
  /** How many jobs can follow the first bay, of which these are done. */
  | { readonly type: 'most'; readonly done: readonly JobResult[] }
  | { readonly type: 'job'; readonly job: ProofJob }
  | { readonly type: 'proof'; readonly results: readonly JobResult[] };

export type FromProver =
  /** `key`: what a proof depends on, all of it; `own`: what is wrong with the scenario's car, as suspects are called. */
  | { readonly type: 'opened'; readonly key: string; readonly own: readonly string[] }
  | { readonly type: 'next'; readonly jobs: readonly ProofJob[] }
  | { readonly type: 'most'; readonly later: number }
  | { readonly type: 'result'; readonly result: JobResult }
  | { readonly type: 'proof'; readonly proof: Proof };

/** Cars and tables have to be loaded; `others` are the scenarios that ship. */
export function proveDesk(others: readonly Scenario[]): (message: ToProver) => FromProver {
  let held: { readonly scenario: Scenario; readonly request: ProofRequest } | null = null;
  return (message) => {
    if (message.type === 'open') {
      held = { scenario: scenarioOf(message.data, rubrics), request: message.request };
      return {
        type: 'opened',
        key: keyOf(held.scenario, held.request, others),
        own: ownSuspects(held.scenario),
      };
    }
    if (held === null) throw new RangeError('no scenario is held');
    const { scenario, request } = held;
    switch (message.type) {
      case 'next':
        return { type: 'next', jobs: jobsOf(request, message.done) };
      case 'most':
        return { type: 'most', later: mostLater(request, message.done) };
      case 'job':
        return { type: 'result', result: runJob(scenario, message.job, others) };
      case 'proof':
        return { type: 'proof', proof: proofOf(scenario, request, message.results) };
    }
  };
}

/** One player plays what solves the scenarios that ship, so these count too. */
export function keyOf({ hash }: Scenario, request: ProofRequest, others: readonly Scenario[]): string {
  const library = hashText(canonicalJson(others.map((one) => one.hash)));
  return [engineHash, proverHash, hash, library, canonicalJson(request)].join(' ');
}
