/** Results of a proof as its jobs would hand them over, for a scenario of which nothing is played. */
import type { ApartTable } from '../../src/prover/apartTable';
import type { JobResult } from '../../src/prover/jobs';
import type { KnowRun } from '../../src/prover/knowRun';
import { LAZY_PLAYERS, type LazyId } from '../../src/prover/lazy/playLazily';
import type { Outcome } from '../../src/prover/outcome';

export const STEPS = 30_000;

export const outcome = (
  player: string,
  seed: number,
  score: number,
  more: Partial<Outcome> = {},
): Outcome => ({
  player,
  seed,
  score,
  reported: score,
  passed: score >= 75,
  critical: [],
  steps: STEPS,
  ...more,
});

export const knowRun = (seed: number, more: Partial<KnowRun> = {}): KnowRun => ({
  seed,
  reached: true,
  claimed: 'condenser-fan-dead',
  share: 0.97,
  charge: 'do-not-charge',
  right: true,
  alike: null,
  minutes: 4,
  costMinutes: 12,
  lines: ['begin', 'finish'],
  trials: [
    { tests: ['low-gauge.rest', 'high-gauge.rest'], nats: 0.4, share: 0.2 },
    { tests: ['fan.radiator-fan.speedRatio.running'], nats: 1.8, share: 0.97 },
  ],
  steps: 400_000,
  ...more,
});

export const table: ApartTable = {
  seed: 1,
  states: ['rest', 'running'],
  tests: [
    {
      id: 'high-gauge.running',
      tool: 'gauge-set',
      state: 'running',
      unit: 'Pa',
      costMinutes: 8,
      isOnBench: true,
    },
    { id: 'gas-air.rest', tool: 'identifier', state: 'rest', unit: '1', costMinutes: 5, isOnBench: false },
  ],
  rows: [
    { cause: 'nothing-wrong', severity: 0, stages: 2, shows: [1.4e6, 0.01] },
    { cause: 'condenser-fan-dead', severity: 0.6, stages: 2, shows: [2.1e6, 0.01] },
    { cause: 'air-in-loop', severity: 0.55, stages: 2, shows: [2.12e6, 0.06] },
    { cause: 'overcharge', severity: 0.55, stages: 2, shows: [null, 0.01] },
  ],
  pairs: [],
  steps: 900_000,
};

/** Of the first seed, all as it should be, but for what is given. */
export const firstResults = (more: {
  readonly table?: ApartTable | null;
  readonly run?: KnowRun | null;
  readonly solution?: Outcome;
  readonly lazy?: (player: LazyId) => Outcome;
}): readonly JobResult[] => [
  { kind: 'apart', table: more.table === undefined ? table : more.table },
  { kind: 'know', seed: 1, run: more.run === undefined ? knowRun(1) : more.run },
  { kind: 'plan', outcome: more.solution ?? outcome('solution', 1, 99) },
  ...LAZY_PLAYERS.map(
    (player): JobResult => ({
      kind: 'lazy',
      player,
      outcome: more.lazy?.(player) ?? outcome(player, 1, 40),
    }),
  ),
];
