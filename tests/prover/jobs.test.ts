import { describe, expect, test } from 'vitest';
import { guessedCauses } from '../../src/prover/guessedCauses';
import { jobsOf } from '../../src/prover/jobs';
import { BLIND_PLAYERS, LAZY_PLAYERS } from '../../src/prover/lazy/playLazily';
import { libraryLuck, luckFindings } from '../../src/prover/libraryLuck';
import { mostLater } from '../../src/prover/mostLater';
import type { Proof } from '../../src/prover/proof';
import { proofOf } from '../../src/prover/proofOf';
import { seedsThatFit } from '../../src/prover/seedsThatFit';
import { scenarioById } from '../../src/session/scenario/library';
import { firstResults, knowRun, outcome, table } from '../support/plantedProof';

const scenario = scenarioById('warm-at-the-lights');
const one = { seeds: 1, budgetSteps: null };
const proved = (more: Parameters<typeof firstResults>[0], request = one): Proof =>
  proofOf(scenario, request, firstResults(more));
const codes = (proof: Proof): string[] => proof.findings.map(({ code }) => code);

describe('the jobs of a proof', () => {
  test('are of the first bay at first, then of as many more as were asked for', () => {
    const first = jobsOf({ seeds: 3, budgetSteps: null }, []);
    expect(new Set(first.map(({ seed }) => seed))).toEqual(new Set([1]));
    const later = jobsOf({ seeds: 3, budgetSteps: null }, firstResults({}));
    expect(later).toHaveLength(2 * (first.length - 1));
    expect(later.some(({ kind }) => kind === 'apart')).toBe(false);
    expect(jobsOf(one, firstResults({}))).toEqual([]);
  });

  test('are fewer where a budget of steps does not reach, the same ones every time', () => {
    const request = { seeds: 20, budgetSteps: 2_600_000 };
    const jobs = jobsOf(request, firstResults({}));
    const seedsOf = (kind: string) => jobs.filter((job) => job.kind === kind).length;
    expect(seedsOf('plan')).toBeGreaterThan(0);
    expect(seedsOf('plan')).toBeLessThan(19);
    expect(jobsOf(request, firstResults({}))).toEqual(jobs);
  });

  test('can be no more than is said, and that falls with each result of the first bay', () => {
    const cheap = firstResults({});
    const dear = firstResults({ lazy: (player) => outcome(player, 1, 40, { steps: 200_000 }) });
    for (const results of [cheap, dear, [...cheap].reverse(), [...dear].reverse()])
      for (const budgetSteps of [1_400_000, 2_600_000, 5_000_000, 9_000_000, null]) {
        const request = { seeds: 20, budgetSteps };
        const most = results.map((_, at) => mostLater(request, results.slice(0, at + 1)));
        expect(most.every((count, at) => at === 0 || count <= most[at - 1])).toBe(true);
        expect(most.at(-1)).toBeGreaterThanOrEqual(jobsOf(request, results).length);
        if (budgetSteps === null) expect(most.at(-1)).toBe(19 * (results.length - 1));
      }
    // before the one that takes longest is done
    const early = dear.filter(({ kind }) => kind !== 'know');
    expect(mostLater({ seeds: 20, budgetSteps: 5_000_000 }, early)).toBeLessThan(60);
  });

  test('leave out first who looks at one thing', () => {
    const costs = { blind: 10, plan: 5, know: 5, looking: 60 };
    expect(seedsThatFit({ seeds: 4, budgetSteps: 200 }, 80, costs)).toEqual({
      blind: 4,
      plan: 4,
      know: 4,
      looking: 2,
    });
    expect(seedsThatFit({ seeds: 4, budgetSteps: 110 }, 80, costs).looking).toBe(1);
    expect(seedsThatFit({ seeds: 4, budgetSteps: null }, 80, costs).looking).toBe(4);
  });
});

describe('a proof', () => {
  test('holds where solution, information and luck are as they should be', () => {
    const proof = proved({});
    expect(proof.verdict).toBe('holds');
    expect(proof.findings).toEqual([]);
    expect(proof.luck.map(({ player }) => player)).toEqual(LAZY_PLAYERS);
    expect(proof.worth?.tests[0]).toEqual({
      test: 'fan.radiator-fan.speedRatio.running',
      nats: 1.8,
      taken: 1,
    });
  });

  test('refuses a solution that does not reach its mark, or breaks what is critical', () => {
    expect(codes(proved({ solution: outcome('solution', 1, 94.9) }))).toEqual(['PRV101']);
    const broken = proved({ solution: outcome('solution', 1, 97, { critical: ['goggles'] }) });
    expect(codes(broken)).toEqual(['PRV102']);
    expect(broken.verdict).toBe('refused');
  });

  test('refuses what cannot be proven by asking, and what is proven and wrong', () => {
    expect(codes(proved({ run: knowRun(1, { reached: false, share: 0.79, right: true }) }))).toEqual([
      'PRV103',
    ]);
    expect(codes(proved({ run: knowRun(1, { right: false, claimed: 'overcharge' }) }))).toEqual(['PRV104']);
  });

  test('refuses luck that passes on more than one bay in twenty, and warns of a habit that passes on all', () => {
    const [blind] = BLIND_PLAYERS;
    const lucky = proved({ lazy: (player) => outcome(player, 1, player === blind ? 80 : 20) });
    expect(lucky.findings).toMatchObject([
      { code: 'PRV105', values: { player: blind, passed: 1, seeds: 1 } },
    ]);
    const habit = proved({ lazy: (player) => outcome(player, 1, player === 'always-the-fan' ? 80 : 20) });
    expect(codes(habit)).toEqual(['PRV108']);
    expect(habit.verdict).toBe('holds');
  });

  test('refuses a look-alike of its own cause that nothing on the bench parts, if it asks for other work', () => {
    const pair = {
      a: 'air-in-loop',
      b: 'condenser-fan-dead',
      decisionDiffers: true,
      best: { test: 'high-gauge.running', spreads: 0.3 },
      wouldTell: {
        test: 'gas-air.rest',
        tool: 'identifier',
        spreads: 5,
        shows: [0.06, 0.01],
      },
    } as const;
    const alike = proved({ table: { ...table, pairs: [pair] } });
    expect(alike.findings).toMatchObject([
      { code: 'PRV106', values: { cause: 'condenser-fan-dead', other: 'air-in-loop', tool: 'identifier' } },
    ]);
    const sameWork = proved({ table: { ...table, pairs: [{ ...pair, decisionDiffers: false }] } });
    expect([codes(sameWork), sameWork.verdict]).toEqual([['PRV107'], 'holds']);
    const others = { ...pair, b: 'overcharge' };
    expect(codes(proved({ table: { ...table, pairs: [others] } }))).toEqual([]);
  });

  test('asks nobody to prove what the solution itself calls likely', () => {
    const oil = scenarioById('oil-on-the-pulley');
    expect(guessedCauses(oil)).toEqual(['too-little-oil']);
    expect(guessedCauses(scenarioById('leaves-and-a-slipping-hub'))).toEqual([]);
    const alike = {
      a: 'low-charge+too-little-oil',
      b: 'low-charge',
      decisionDiffers: true,
      best: null,
      wouldTell: null,
    } as const;
    const request = { seeds: 1, budgetSteps: 1 };
    const met = proofOf(oil, request, firstResults({ run: knowRun(1, { claimed: 'low-charge', alike }) }));
    expect(codes(met)).toEqual(['PRV113']);
    const other = { ...alike, b: 'weak-compressor' };
    expect(codes(proofOf(oil, request, firstResults({ run: knowRun(1, { alike: other }) })))).toEqual([
      'PRV106',
    ]);
  });

  test('says what it left out, part by part', () => {
    const proof = proved({}, { seeds: 20, budgetSteps: 1 } as never);
    expect(proof.leftOut).toEqual([
      { what: 'plan', asked: 20, done: 1 },
      { what: 'know', asked: 20, done: 1 },
      { what: 'blind', asked: 20, done: 1 },
      { what: 'looking', asked: 20, done: 1 },
    ]);
  });

  test('asks nothing of information where nothing is to be diagnosed', () => {
    const proof = proved({ run: null, table: null });
    expect([proof.solved.know, proof.worth, proof.fairness.costMinutes]).toEqual([null, null, null]);
    expect(proof.verdict).toBe('holds');
  });
});

test('a hint is worth the causes it names and what the tests it points to would make of the true one', () => {
  const told = ['Is the radiator fan not turning?', 'Read the high side.', 'Name the fan.'];
  const hinted = { ...scenario, data: { ...scenario.data, hints: told } };
  const { worth, findings } = proofOf(hinted, one, firstResults({}));
  const [named, pointed] = worth?.hints ?? [];
  expect([named.names, named.tests]).toEqual([['condenser-fan-dead'], []]);
  expect(named.shareAfter).toBe(named.shareBefore);
  expect([pointed.names, pointed.tests]).toEqual([[], ['high-gauge.running']]);
  expect(pointed.shareAfter).toBeGreaterThan(1.2 * pointed.shareBefore);
  expect(findings).toMatchObject([{ code: 'PRV111', path: ['hints', 0] }]);
});

test('a habit that passes more than a third of a library speaks against the library', () => {
  const passing = proved({ lazy: (player) => outcome(player, 1, player === 'always-the-fan' ? 80 : 20) });
  const failing = proved({});
  expect(luckFindings(libraryLuck([passing, failing, failing]))).toEqual([]);
  expect(luckFindings(libraryLuck([passing, passing, failing]))).toMatchObject([
    { code: 'PRV120', values: { player: 'always-the-fan', passed: 2, of: 3 } },
  ]);
});
