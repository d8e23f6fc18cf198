/** Suspects against tests: who cannot be told from whom, held by ghosts that must come back as pairs. */
import { expect, test } from 'vitest';
import { tellApart } from '../../src/prover/apart/tellApart';
import type { ApartTable } from '../../src/prover/apartTable';
import { scenarioById } from '../../src/session/scenario/library';
import type { GhostSpec } from '../../src/suspects/causes';

const SOUND: GhostSpec = { cause: 'nothing-wrong', severity: 0 };
const WEAK: GhostSpec = { cause: 'weak-compressor', severity: 0.9 };
/** A fault by name whose effect is nothing. */
const PHANTOM: GhostSpec = { cause: 'phantom', severity: 0.9, both: [] };
/** The same fault a second time, under another name. */
const DOUBLE: GhostSpec = { ...WEAK, cause: 'double', both: [WEAK] };
const MIXED: GhostSpec = { cause: 'mixed-refrigerant', severity: 0.55 };

const withoutFaults = scenarioById('same-needle-right');
const tableOf = (...ensemble: readonly GhostSpec[]): ApartTable =>
  tellApart(withoutFaults, 1, ensemble) as ApartTable;
const pairs = ({ pairs: found }: ApartTable): string[] => found.map(({ a, b }) => `${a} | ${b}`);

test('a fault without effect comes back as one with the sound car, a doubled one with itself, and no others', () => {
  const table = tableOf(SOUND, PHANTOM, WEAK, DOUBLE);
  expect(pairs(table)).toEqual(['nothing-wrong | phantom', 'weak-compressor | double']);
  for (const { best, wouldTell, decisionDiffers } of table.pairs) {
    expect(best?.spreads).toBe(0);
    expect(wouldTell).toBeNull();
    expect(decisionDiffers).toBe(true);
  }
});

test('what an identifier alone would tell names the identifier, and both of its readings', () => {
  const [pair] = tableOf(SOUND, MIXED).pairs;
  expect(pair.wouldTell).toMatchObject({ tool: 'identifier', test: 'gas-r134a.rest' });
  const [pure, mixed] = pair.wouldTell?.shows ?? [];
  expect(pure).toBeGreaterThan(0.98);
  expect(mixed).toBeLessThan(0.95);
});

test('a row has a value or none for every test, and a test says whether the bench has what it takes', () => {
  const { tests, rows } = tableOf(SOUND, WEAK);
  for (const { shows } of rows) expect(shows).toHaveLength(tests.length);
  const onBench = new Map(tests.map(({ tool, isOnBench }) => [tool, isOnBench]));
  expect(onBench.get('gauge-set')).toBe(true);
  expect(onBench.get('thermometer')).toBe(true);
  expect(onBench.get('recovery-machine')).toBe(false);
});

test('nothing stands in a table of a loop that came empty', () => {
  expect(tellApart(scenarioById('weighed-in'), 1, [SOUND])).toBeNull();
});

test('who is parted from all others is read no further, and no pair is lost by it', () => {
  const { states, rows, pairs: found } = tableOf(SOUND, PHANTOM, WEAK, { ...WEAK, severity: 0.8 });
  const read = new Map(rows.map(({ cause, stages }) => [cause, stages]));
  expect(read.get('nothing-wrong')).toBe(states.length);
  expect(read.get('phantom')).toBe(states.length);
  expect(read.get('weak-compressor')).toBe(states.indexOf('running') + 1);
  expect(found).toHaveLength(1);
});
