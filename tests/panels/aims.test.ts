/** Before a session that counts every ready-made rule is told in one line, and no line gives the right decision away. */
import { describe, expect, it } from 'vitest';
import { rubrics } from '../../src/session/scenario/rubrics';
import { isWordId, say } from '../../src/words/words';

const rules = [...rubrics.values()].flatMap((rubric) => rubric.rules).map(({ id }) => id);
const lineOf = (rule: string): string => {
  const id = `aims.${rule}`;
  return isWordId(id) ? say({ id }) : '';
};

describe('every ready-made rule', () => {
  it.each(rules)('%s has a line', (rule) => {
    expect(lineOf(rule)).not.toBe('');
  });
});

describe('a line does not tell', () => {
  it.each([
    ['saidCharge', 'saidNo'],
    ['saidCharge', 'saidRefer'],
    ['chargeWeighed', 'nothingAdded'],
    ['chargeWeighed', 'neverCharge'],
    ['chargedToLabel', 'chargeKept'],
  ])('%s from %s', (one, other) => {
    expect(lineOf(one)).toBe(lineOf(other));
  });
});
