/** The proof of a scenario, put together from what its jobs found, in the order of the jobs. */
import { engineHash } from '../session/engineHash';
import type { Scenario } from '../session/scenario/scenario';
import type { ApartTable } from './apartTable';
import { guessedCauses } from './guessedCauses';
import { hintsWorth } from './hintsWorth';
import type { JobResult } from './jobs';
import type { KnowRun } from './knowRun';
import { BLIND_PLAYERS, LAZY_PLAYERS } from './lazy/playLazily';
import type { Outcome } from './outcome';
import { ownSuspects } from './ownSuspects';
import {
  type Fairness,
  type LeftOut,
  type Luck,
  type Proof,
  type ProofRequest,
  SOLUTION_MARK,
  type Solved,
  type Worth,
} from './proof';
import { proofFindings } from './proofFindings';
import { spread } from './spread';

export function proofOf(scenario: Scenario, request: ProofRequest, results: readonly JobResult[]): Proof {
  const solved = solvedIn(results);
  const luck = luckIn(results);
  const apart = results.find(isTable)?.table ?? null;
  const told = {
    scenario: scenario.data.id,
    title: scenario.data.title,
    scenarioHash: scenario.hash,
    engineHash,
    request,
    solved,
    luck,
    own: ownSuspects(scenario),
    guessed: guessedCauses(scenario),
    apart,
    fairness: fairnessOf(solved),
    worth: worthOf(scenario, solved.know?.runs ?? [], apart),
    leftOut: leftOutOf(request, solved, luck),
  };
  const findings = proofFindings(told);
  return {
    ...told,
    verdict: findings.some(({ level }) => level === 'error') ? 'refused' : 'holds',
    findings,
  };
}

const isTable = (result: JobResult): result is JobResult & { readonly table: ApartTable | null } =>
  result.kind === 'apart';

const outcomesOf = (results: readonly JobResult[], kind: 'plan' | 'lazy'): readonly Outcome[] =>
  results.flatMap((result) => ('outcome' in result && result.kind === kind ? [result.outcome] : []));

function solvedIn(results: readonly JobResult[]): Solved {
  const played = outcomesOf(results, 'plan');
  const runs = results.flatMap((result) =>
    result.kind === 'know' && result.run !== null ? [result.run] : [],
  );
  return {
    solution: {
      seeds: played.map(({ seed }) => seed),
      scores: spread(played.map(({ score }) => score)),
      low: played.filter(({ score }) => score < SOLUTION_MARK).map(({ seed }) => seed),
      critical: [...new Set(played.flatMap(({ critical }) => critical))],
    },
    know:
      runs.length === 0
        ? null
        : {
            seeds: runs.map(({ seed }) => seed),
            right: runs.filter(({ reached, right }) => reached && right).map(({ seed }) => seed),
            runs,
          },
  };
}

function luckIn(results: readonly JobResult[]): readonly Luck[] {
  const played = outcomesOf(results, 'lazy');
  return LAZY_PLAYERS.flatMap((player) => {
    const own = played.filter((outcome) => outcome.player === player);
    if (own.length === 0) return [];
    return [
      {
        player,
        isBlind: BLIND_PLAYERS.includes(player),
        seeds: own.map(({ seed }) => seed),
        passed: own.filter(({ passed }) => passed).map(({ seed }) => seed),
        scores: spread(own.map(({ reported }) => reported)),
      },
    ];
  });
}

function fairnessOf({ solution, know }: Solved): Fairness {
  const lost = new Set([
    ...solution.low,
    ...(know?.seeds.filter((seed) => !know.right.includes(seed)) ?? []),
  ]);
  return {
    scores: solution.scores,
    costMinutes: know === null ? null : spread(know.runs.map(({ costMinutes }) => costMinutes)),
    unsolvable: [...lost].sort((a, b) => a - b),
  };
}

function worthOf(scenario: Scenario, runs: readonly KnowRun[], apart: ApartTable | null): Worth | null {
  if (runs.length === 0) return null;
  const told = new Map<string, { nats: number; taken: number }>();
  for (const { tests, nats } of runs.flatMap(({ trials }) => trials))
    for (const test of tests) {
      const sum = told.get(test) ?? { nats: 0, taken: 0 };
      told.set(test, { nats: sum.nats + nats / tests.length, taken: sum.taken + 1 });
    }
  const tests = [...told].map(([test, { nats, taken }]) => ({ test, nats: nats / taken, taken }));
  return {
    tests: tests.sort((a, b) => b.nats - a.nats || (a.test < b.test ? -1 : 1)),
    costMinutes: spread(runs.map(({ costMinutes }) => costMinutes)),
    hints: apart === null ? [] : hintsWorth(scenario, apart, ownSuspects(scenario)),
  };
}

function leftOutOf(
  { seeds }: ProofRequest,
  { solution, know }: Solved,
  luck: readonly Luck[],
): readonly LeftOut[] {
  const least = (isBlind: boolean): number =>
    Math.min(seeds, ...luck.filter((one) => one.isBlind === isBlind).map((one) => one.seeds.length));
  const done: readonly LeftOut[] = [
    { what: 'plan', asked: seeds, done: solution.seeds.length },
    { what: 'know', asked: seeds, done: know?.seeds.length ?? seeds },
    { what: 'blind', asked: seeds, done: least(true) },
    { what: 'looking', asked: seeds, done: least(false) },
  ];
  return done.filter((part) => part.done < part.asked);
}
