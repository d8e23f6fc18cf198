/** Every sentence of every rule says the time, the step, and what it quotes, with its unit. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readYaml } from '../../shared/schema/readYaml';
import type { Rule } from '../../shared/schema/rubric';
import { flattenWords, placeholdersOf, type WordGroup } from '../../shared/schema/words';
import { measureList } from '../../src/session/record/measures';
import { scenarios } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';

const file = 'shared/words/en/rules.yaml';
const words = flattenWords('rules', readYaml(file, readFileSync(file, 'utf8')).data as WordGroup);
const rules: readonly Rule[] = [
  ...[...rubrics.values()].flatMap((rubric) => rubric.rules),
  ...scenarios.flatMap(({ data }) => data.rubric.add ?? []),
];

/** Asked whatever else comes true when it is broken, so it is never advice alone. */
function isAskedWhereBroken(rule: Rule): boolean {
  if (!('never' in rule) || rule.asked === undefined || !('any' in rule.asked)) return false;
  const asked = rule.asked.any.map((one) => JSON.stringify(one));
  const ways = 'any' in rule.never ? rule.never.any : [rule.never];
  return ways.every((way) => {
    const [first] = 'all' in way ? way.all : [way];
    return asked.includes(JSON.stringify(way)) || asked.includes(JSON.stringify(first));
  });
}

describe.each(rules.map((rule) => [rule.id, rule] as const))('the sentences of %s', (id, rule) => {
  const told = ['kept', 'broken', 'idle', 'advised', 'told'].filter((key) => words.has(`rules.${id}.${key}`));

  it('quote time, step and all that the rule quotes, and nothing else', () => {
    const expected = ['time', 'step', ...Object.keys(rule.quotes)].sort();
    for (const key of told)
      expect([key, placeholdersOf(words.get(`rules.${id}.${key}`) ?? '')]).toEqual([key, expected]);
  });

  it('are there for every way it can go', () => {
    const canBeIdle = rule.needs !== undefined || rule.asked !== undefined || 'before' in rule;
    const ways = [
      ...['kept', 'broken'],
      ...(canBeIdle ? ['idle'] : []),
      ...(rule.asked === undefined || isAskedWhereBroken(rule) ? [] : ['advised']),
    ];
    for (const way of ways) expect(told.includes(way) || told.includes('told'), `${id} ${way}`).toBe(true);
    expect(words.has(`rules.${id}.why`)).toBe(true);
  });

  it('name a published source or say that there is none', () => {
    for (const reference of rule.references) expect(reference.length).toBeGreaterThan(20);
  });

  it('quote something that has a unit or counts', () => {
    for (const source of Object.values(rule.quotes)) {
      const isMeasure = measureList.some(({ id: known }) => known === source);
      expect(isMeasure || /Pa$|K$|Kg$|\.kg$|\.rpm$|Ppm$|Share$|volts$|milligrams$/.test(source), source).toBe(
        true,
      );
    }
  });
});

it('knows no sentence without a rule', () => {
  const known = new Set(rules.map(({ id }) => id));
  const spoken = new Set([...words.keys()].map((id) => id.split('.')[1]));
  expect([...spoken].filter((id) => !known.has(id))).toEqual([]);
});
