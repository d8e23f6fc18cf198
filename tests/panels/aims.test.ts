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

describe('the lines of a briefing', () => {
  const linesWith = (rubric: string): string[] => {
    const told = ['service', 'hazards', 'lawful', 'findings', 'handingOver', rubric].flatMap((id) =>
      (rubrics.get(id)?.rules ?? []).map((rule) => `${rule.domain}: ${lineOf(rule.id)}`),
    );
    return [...new Set(told)].sort();
  };

  it.each(['weighingIn', 'recoverAndRecharge'])(
    'are the same with %s as where nothing is to be added',
    (rubric) => {
      expect(linesWith(rubric)).toEqual(linesWith('leaveTheCharge'));
    },
  );

  it('tell apart neither rules that are dropped where nothing goes in nor those dropped where something does', () => {
    expect(lineOf('chargeSummed')).toBe(lineOf('saidNo'));
    expect(lineOf('vented')).toBe(lineOf('letOutByHand'));
    expect(lineOf('readShut')).toBe(lineOf('namedOnReadings'));
    expect(lineOf('gasSaidFirst')).toBe(lineOf('papersRead'));
  });
});
