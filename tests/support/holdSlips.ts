/**
 * Every key of a template and of two scenarios, slipped in six ways: all are told, nine in ten on the line where they are, four
 * in five with what would be right. A key that may be left out is no slip when it is.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { conditionSchema } from '../../shared/schema/condition';
import { describeKeys, type KeyDescription } from '../../shared/schema/describeKeys';
import { shapesOf } from '../../shared/schema/picked';
import { planLinesSchema } from '../../shared/schema/plan';
import type { Problem } from '../../shared/schema/problem';
import { ruleSchema } from '../../shared/schema/rubric';
import { scenarioSchema } from '../../shared/schema/scenario';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { readScenario } from '../../src/scoring/readScenario';
import { rubrics } from '../../src/session/scenario/rubrics';
import { SLIP_KINDS, type Slip, slipsOf } from './slips';

const FILES = [
  'scenarios/templates/two-faults.yaml',
  'scenarios/leaves.yaml',
  'scenarios/the-missing-cap.yaml',
];
const SEED = 6;
/** A quantity's slips are few, so they are taken always. */
const ALWAYS: readonly string[] = ['wrong unit', 'bare number'];

const ELSEWHERE = new Map([
  [conditionSchema, 'condition'],
  [ruleSchema, 'rule'],
  [planLinesSchema, 'plan'],
] as [typeof conditionSchema, string][]);
type Keys = readonly KeyDescription[];
const KEYS = describeKeys(scenarioSchema, ELSEWHERE);
const RULE_KEYS = (shapesOf(ruleSchema) ?? []).flatMap((shape) => describeKeys(shape, ELSEWHERE));
/** A condition is of anything and a line of a plan is done once where they do not say. */
const UNSAID: Readonly<Record<string, string>> = { condition: 'subject', plan: 'times' };

const pathOf = (id: string): string => id.replaceAll('[]', '');

/** By the schema; what is told elsewhere has its own keys. */
function mayBeLeftOut(path: string, keys: Keys): boolean {
  const own = keys.find(({ id }) => !id.endsWith('[]') && pathOf(id) === path);
  if (own) return !own.required;
  const told = keys.find(
    ({ id, is }) => path.startsWith(`${pathOf(id)}.`) && (is === 'rule' || UNSAID[is] !== undefined),
  );
  if (!told) return false;
  const rest = path.slice(pathOf(told.id).length + 1);
  return told.is === 'rule' ? mayBeLeftOut(rest, RULE_KEYS) : rest.split('.').at(-1) === UNSAID[told.is];
}

interface Told {
  readonly slip: Slip;
  readonly problems: readonly Problem[];
}

const isRight = ({ right }: Slip, { message, fix }: Problem): boolean =>
  right.some((one) => fix?.to === one || message.includes(one));
const isOnLine = ({ lines: [first, last] }: Slip, { line }: Problem): boolean =>
  line >= first && line <= last;

/** `share` of the keys, by the seed. */
export function holdSlips(share: number): void {
  const told: Told[] = FILES.flatMap((file) => {
    const seen = new Set<string>();
    const slips = slipsOf(readFileSync(file, 'utf8'), SEED).filter((slip) => {
      const name = `${slip.kind} ${slip.key.replace(/^plans.*/, 'plans')}`;
      if (seen.has(name)) return false;
      seen.add(name);
      return ALWAYS.includes(slip.kind) || keyedUniform(SEED, file, name, 0) < share;
    });
    return slips.map((slip) => ({ slip, problems: readScenario(file, slip.text, rubrics).problems }));
  });

  describe.each(SLIP_KINDS)('a slip: %s', (kind) => {
    const some = told.filter(
      ({ slip, problems }) => slip.kind === kind && (kind !== 'deleted' || problems.length > 0),
    );
    const among = (fits: (one: Told) => boolean): number => some.filter(fits).length / some.length;

    it('is told whatever key it is', () => {
      expect(some.length).toBeGreaterThan(10);
      expect(some.filter(({ problems }) => problems.length === 0).map(({ slip }) => slip.key)).toEqual([]);
    });

    it.runIf(kind === 'deleted')('that nobody tells is of a key that may be left out', () => {
      const untold = told.filter(({ slip, problems }) => slip.kind === 'deleted' && problems.length === 0);
      expect(untold.map(({ slip }) => slip.key).filter((key) => !mayBeLeftOut(key, KEYS))).toEqual([]);
    });

    it('is told on its line, nine in ten', () => {
      const on = among(({ slip, problems }) => problems.some((one) => isOnLine(slip, one)));
      expect(on).toBeGreaterThanOrEqual(0.9);
    });

    it('is told with what would be right, four in five', () => {
      const right = among(({ slip, problems }) =>
        problems.some((one) => isOnLine(slip, one) && isRight(slip, one)),
      );
      expect(right).toBeGreaterThanOrEqual(0.8);
    });
  });
}
