/**
 * A proof in parts that can be reckoned anywhere and in any order: plain data in, plain data out. `jobsOf` says what is to
 * be done next, given the results of what was done, in the order of its jobs; nothing left means that `proofOf` can be made.
 */
import type { Scenario } from '../session/scenario/scenario';
import { tellApart } from './apart/tellApart';
import type { ApartTable } from './apartTable';
import { playToKnow } from './know/playToKnow';
import type { KnowRun } from './knowRun';
import { BLIND_PLAYERS, LAZY_PLAYERS, type LazyId, playLazily } from './lazy/playLazily';
import type { Outcome } from './outcome';
import { playSolution } from './playSolution';
import type { ProofRequest } from './proof';
import { type ProofPart, seedsThatFit } from './seedsThatFit';

export type ProofJob =
  | { readonly kind: 'plan'; readonly seed: number }
  | { readonly kind: 'lazy'; readonly player: LazyId; readonly seed: number }
  | { readonly kind: 'know'; readonly seed: number }
  | { readonly kind: 'apart'; readonly seed: number };

export type JobResult =
  | { readonly kind: 'plan'; readonly outcome: Outcome }
  | { readonly kind: 'lazy'; readonly player: LazyId; readonly outcome: Outcome }
  | { readonly kind: 'know'; readonly seed: number; readonly run: KnowRun | null }
  | { readonly kind: 'apart'; readonly table: ApartTable | null };

const FIRST_SEED = 1;
const LOOKING_PLAYERS = LAZY_PLAYERS.filter((player) => !BLIND_PLAYERS.includes(player));

/** The longest first, so that two who share the work end together. */
const PARTS = ['know', 'plan', 'looking', 'blind'] as const satisfies readonly ProofPart[];

const jobsOn = (seed: number): Record<ProofPart, readonly ProofJob[]> => ({
  know: [{ kind: 'know', seed }],
  plan: [{ kind: 'plan', seed }],
  looking: LOOKING_PLAYERS.map((player) => ({ kind: 'lazy', player, seed })),
  blind: BLIND_PLAYERS.map((player) => ({ kind: 'lazy', player, seed })),
});

/** How many jobs a seed has of each part. */
export const jobsByPart = PARTS.map((part) => [part, jobsOn(FIRST_SEED)[part].length] as const);

export function jobsOf(request: ProofRequest, done: readonly JobResult[]): readonly ProofJob[] {
  const onFirst = jobsOn(FIRST_SEED);
  const table: ProofJob = { kind: 'apart', seed: FIRST_SEED };
  const first = [table, ...PARTS.flatMap((part) => onFirst[part])];
  if (done.length === 0) return first;
  if (done.length > first.length) return [];
  const costs = costsOf(done);
  const spent = done.reduce((sum, result) => sum + spentOn(result), 0);
  const fits = seedsThatFit(request, spent, costs);
  const later = Array.from({ length: request.seeds - FIRST_SEED }, (_, at) => FIRST_SEED + 1 + at);
  return later.flatMap((seed) => {
    const jobs = jobsOn(seed);
    return PARTS.flatMap((part) => (seed <= fits[part] ? jobs[part] : []));
  });
}

/** `others`: the scenarios that ship, for who plays another one's solution. */
export function runJob(scenario: Scenario, job: ProofJob, others: readonly Scenario[]): JobResult {
  const { kind, seed } = job;
  switch (kind) {
    case 'plan':
      return { kind, outcome: playSolution(scenario, seed) };
    case 'lazy':
      return { kind, player: job.player, outcome: playLazily(scenario, job.player, seed, others) };
    case 'know':
      return { kind, seed, run: playToKnow(scenario, seed) };
    case 'apart':
      return { kind, table: tellApart(scenario, seed) };
  }
}

/** Forecasts are lived for the table; who asks for information costs what it does beyond that. */
export function spentOn(result: JobResult): number {
  switch (result.kind) {
    case 'apart':
      return result.table?.steps ?? 0;
    case 'know':
      return result.run?.steps ?? 0;
    default:
      return result.outcome.steps;
  }
}

/** What one more seed of each part costs. */
export function costsOf(done: readonly JobResult[]): Record<ProofPart, number> {
  const costs: Record<ProofPart, number> = { know: 0, plan: 0, looking: 0, blind: 0 };
  for (const result of done) if (result.kind !== 'apart') costs[partOf(result)] += spentOn(result);
  return costs;
}

function partOf(result: Exclude<JobResult, { readonly kind: 'apart' }>): ProofPart {
  if (result.kind !== 'lazy') return result.kind;
  return BLIND_PLAYERS.includes(result.player) ? 'blind' : 'looking';
}
