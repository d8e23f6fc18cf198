/** Every sentence of every rule says the time, the step, and what it quotes, with its unit. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Condition } from '../../shared/schema/condition';
import { readYaml } from '../../shared/schema/readYaml';
import type { Rule } from '../../shared/schema/rubric';
import { flattenWords, placeholdersOf, type WordGroup } from '../../shared/schema/wordGroup';
import { checkTold } from '../../src/scoring/checkTold';
import { measureList } from '../../src/session/record/measures';
import { scenarios } from '../../src/session/scenario/library';
import { rubrics } from '../../src/session/scenario/rubrics';

const file = 'shared/words/en/rules.yaml';
const words = flattenWords('rules', readYaml(file, readFileSync(file, 'utf8')).data as WordGroup);
const rules: readonly Rule[] = [
  ...[...rubrics.values()].flatMap((rubric) => rubric.rules),
  ...scenarios.flatMap(({ data }) => data.rubric.add ?? []),
];

type Atom = Exclude<Condition, { all: unknown } | { any: unknown }>;

/** Ways a condition comes true, each a list of what has to hold at once. */
function waysOf(condition: Condition): Atom[][] {
  if ('any' in condition) return condition.any.flatMap(waysOf);
  if (!('all' in condition)) return [[condition]];
  return condition.all
    .map(waysOf)
    .reduce<Atom[][]>((so, far) => so.flatMap((one) => far.map((other) => [...one, ...other])), [[]]);
}

/** The same, or the same event whatever it is about. */
function follows(asked: Atom, from: Atom): boolean {
  if (JSON.stringify(asked) === JSON.stringify(from)) return true;
  return 'event' in asked && asked.subject === undefined && 'event' in from && from.event === asked.event;
}

/** No deed, or asked whatever else comes true when it is broken, so it is never advice alone. */
function isNeverAdvice(rule: Rule): boolean {
  if (!('never' in rule)) return true;
  if (rule.asked === undefined) return false;
  const asked = waysOf(rule.asked);
  return waysOf(rule.never).every((broken) =>
    asked.some((one) => one.every((atom) => broken.some((from) => follows(atom, from)))),
  );
}

describe.each(rules.map((rule) => [rule.id, rule] as const))('the sentences of %s', (id, rule) => {
  const told = ['kept', 'broken', 'idle', 'advised', 'told'].filter((key) => words.has(`rules.${id}.${key}`));

  it('quote the time and all that the rule quotes, and nothing else', () => {
    const expected = ['time', ...Object.keys(rule.quotes)].sort();
    for (const key of told)
      expect([key, placeholdersOf(words.get(`rules.${id}.${key}`) ?? '')]).toEqual([key, expected]);
  });

  it('have a pressure in what they leave out, never the time, where nobody could read one', () => {
    const pressures = Object.keys(rule.quotes).filter((name) => rule.quotes[name].endsWith('ressurePa'));
    for (const key of told) {
      const sentence = words.get(`rules.${id}.${key}`) ?? '';
      const asides = [...sentence.matchAll(/\[([^[\]]*)\]/gu)].map(([, aside]) => placeholdersOf(aside));
      for (const places of asides) {
        expect(
          places.some((name) => pressures.includes(name)),
          sentence,
        ).toBe(true);
        expect(places).not.toContain('time');
      }
      expect(sentence.replace(/\[[^[\]]*\]/gu, '')).not.toMatch(/[[\]]/u);
    }
  });

  it('are there for every way it can go', () => {
    const canBeIdle = rule.needs !== undefined || rule.asked !== undefined || 'before' in rule;
    const ways = [
      ...['kept', 'broken'],
      ...(canBeIdle ? ['idle'] : []),
      ...(rule.asked === undefined || isNeverAdvice(rule) ? [] : ['advised']),
    ];
    for (const way of ways) expect(told.includes(way) || told.includes('told'), `${id} ${way}`).toBe(true);
    expect(words.has(`rules.${id}.why`)).toBe(true);
    expect(checkTold(rule)).toBeNull();
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
