/** The player that asks: it finds the cause by what a person can have, and does not where that cannot be told. */
import { expect, test } from 'vitest';
import { playToKnow } from '../../src/prover/know/playToKnow';
import type { KnowRun } from '../../src/prover/knowRun';
import { readWords } from '../../src/session/plan/planWords';
import { scenarioById } from '../../src/session/scenario/library';
import type { GhostSpec } from '../../src/suspects/causes';

const SOUND: GhostSpec = { cause: 'nothing-wrong', severity: 0 };
const suspects = (...causes: readonly string[]): readonly GhostSpec[] => [
  SOUND,
  ...causes.flatMap((cause) => [0.55, 0.9].map((severity) => ({ cause, severity }))),
];
const LEAVES = suspects('condenser-air-blocked', 'overcharge', 'weak-compressor');
const play = (id: string, seed: number, ensemble: readonly GhostSpec[]): KnowRun =>
  playToKnow(scenarioById(id), seed, ensemble) as KnowRun;

test('leaves on a condenser are found, on two seeds, by lines that the text twin understands', () => {
  for (const seed of [1, 2]) {
    const run = play('leaves', seed, LEAVES);
    expect(run).toMatchObject({ claimed: 'condenser-air-blocked', reached: true, right: true });
    expect(run.charge).toBe('do-not-charge');
    expect(run.share).toBeGreaterThanOrEqual(0.8);
    for (const line of run.lines) expect(readWords(line)).toHaveProperty('act');
    expect(run.trials.length).toBeGreaterThan(0);
  }
});

test('the same seed gives the same run, whatever was lived before', () => {
  const before = play('leaves', 2, LEAVES);
  expect(play('leaves', 2, LEAVES)).toEqual(before);
});

test('what is hidden decides nothing: of suspects that lack it, it names another and is not right', () => {
  const run = play('leaves', 1, suspects('weak-compressor', 'txv-stuck-open'));
  expect(run.right).toBe(false);
});

test('two causes that no test tells apart are not proven', () => {
  const twice: readonly GhostSpec[] = [
    ...LEAVES,
    ...[0.55, 0.9].map((severity) => ({
      cause: 'double',
      severity,
      both: [{ cause: 'condenser-air-blocked', severity }],
    })),
  ];
  const run = play('leaves', 1, twice);
  expect(run.reached).toBe(false);
  expect(run.share).toBeGreaterThan(0.4);
  expect(run.share).toBeLessThan(0.6);
});

test('a drier whose severity no suspect has, between hardly a restriction and nearly shut, is found', () => {
  const run = play('cold-spot', 1, suspects('drier-restricted', 'low-charge'));
  expect(run).toMatchObject({ claimed: 'drier-restricted', reached: true, right: true });
});

test('where there is an identifier no needle is read before it, and a gas that is not the loop’s own is proven by it alone', () => {
  const run = play('no-label-at-all', 1, [...suspects('mixed-refrigerant', 'overcharge')]);
  expect(run.trials.map(({ tests }) => tests)).toEqual([['gas-r134a.rest', 'gas-air.rest']]);
  expect(run).toMatchObject({ claimed: 'mixed-refrigerant', right: true });
});

test('nothing is to be found out of a loop that came empty', () => {
  expect(playToKnow(scenarioById('weighed-in'), 1, [SOUND])).toBeNull();
});
