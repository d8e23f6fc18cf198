/**
 * Every key of a template and of two scenarios, slipped in six ways: all are told, nine in ten on the line where they are, four
 * in five with what would be right. A key that may be left out is no slip when it is.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Problem } from '../../shared/schema/problem';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { readScenario } from '../../src/scoring/readScenario';
import { rubrics } from '../../src/session/scenario/rubrics';
import { isLongRun } from '../support/isLongRun';
import { SLIP_KINDS, type Slip, slipsOf } from '../support/slips';

const FILES = [
  'scenarios/templates/two-faults.yaml',
  'scenarios/leaves.yaml',
  'scenarios/the-missing-cap.yaml',
];
const SEED = 6;
/** Of the keys, by the seed; the long run takes all. A quantity's slips are few, so they are taken always. */
const SHARE = isLongRun ? 1 : 0.2;
const ALWAYS: readonly string[] = ['wrong unit', 'bare number'];

interface Told {
  readonly slip: Slip;
  readonly problems: readonly Problem[];
}

const isRight = ({ right }: Slip, { message, fix }: Problem): boolean =>
  right.some((one) => fix?.to === one || message.includes(one));
const isOnLine = ({ lines: [first, last] }: Slip, { line }: Problem): boolean =>
  line >= first && line <= last;

const told: Told[] = FILES.flatMap((file) => {
  const seen = new Set<string>();
  const slips = slipsOf(readFileSync(file, 'utf8'), SEED).filter((slip) => {
    const name = `${slip.kind} ${slip.key.replace(/^plans.*/, 'plans')}`;
    if (seen.has(name)) return false;
    seen.add(name);
    return ALWAYS.includes(slip.kind) || keyedUniform(SEED, file, name, 0) < SHARE;
  });
  return slips.map((slip) => ({ slip, problems: readScenario(file, slip.text, rubrics).problems }));
});

describe.each(SLIP_KINDS)('a slip: %s', (kind) => {
  const some = told.filter(
    ({ slip, problems }) => slip.kind === kind && (kind !== 'deleted' || problems.length > 0),
  );
  const share = (fits: (one: Told) => boolean): number => some.filter(fits).length / some.length;

  it('is told whatever key it is', () => {
    expect(some.length).toBeGreaterThan(10);
    expect(some.filter(({ problems }) => problems.length === 0).map(({ slip }) => slip.key)).toEqual([]);
  });

  it('is told on its line, nine in ten', () => {
    const on = share(({ slip, problems }) => problems.some((one) => isOnLine(slip, one)));
    expect(on).toBeGreaterThanOrEqual(0.9);
  });

  it('is told with what would be right, four in five', () => {
    const right = share(({ slip, problems }) =>
      problems.some((one) => isOnLine(slip, one) && isRight(slip, one)),
    );
    expect(right).toBeGreaterThanOrEqual(0.8);
  });
});
