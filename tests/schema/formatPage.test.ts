/** The page for authors: it has every key of the form and no other, with the stars where they belong, and its examples are read. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { z } from 'zod';
import { formatPage } from '../../shared/build/formatPage';
import { conditionSchema } from '../../shared/schema/condition';
import { describeKeys } from '../../shared/schema/describeKeys';
import { shapesOf } from '../../shared/schema/picked';
import { planLinesSchema } from '../../shared/schema/plan';
import { PROBLEM_CODES } from '../../shared/schema/problemCodes';
import { shapeProblems } from '../../shared/schema/problems';
import { readYaml } from '../../shared/schema/readYaml';
import { ruleSchema } from '../../shared/schema/rubric';
import { scenarioSchema } from '../../shared/schema/scenario';
import { scenarioSchemaText } from '../../src/cli/lists/scenarioSchema';
import { findingCodes } from '../../src/prover/findingCodes';
import { filesUnder } from '../architecture/sourceFile';

const page = formatPage();
const ELSEWHERE = new Map([
  [conditionSchema, 'condition'],
  [ruleSchema, 'rule'],
  [planLinesSchema, 'plan'],
] as [typeof conditionSchema, string][]);
const keys = describeKeys(scenarioSchema, ELSEWHERE).filter(({ id }) => !id.endsWith('[]'));

/** Keys of every shape a schema may have, those within its own groups too. */
const keysOfShapes = (schema: z.ZodType): string[] => {
  const found = (shapesOf(schema) ?? []).flatMap((shape) =>
    describeKeys(shape, ELSEWHERE).map(({ id }) => id),
  );
  return [
    ...new Set(found.filter((id) => !/\[\]|^quotes\./.test(id)).flatMap((id) => id.split('.').slice(-1))),
  ].sort();
};

describe('the page for authors', () => {
  it('has every key of a scenario, and no other', () => {
    expect([...page.keys.keys()].sort()).toEqual(keys.map(({ id }) => id).sort());
  });

  it('puts a star on those that have to be there', () => {
    const starred = [...page.keys].filter(([, { required }]) => required).map(([key]) => key);
    expect(starred.sort()).toEqual(
      keys
        .filter(({ required }) => required)
        .map(({ id }) => id)
        .sort(),
    );
  });

  it('has every key of a condition, a rule and a plan', () => {
    expect([...(page.inner.get('in a condition') ?? [])].sort()).toEqual(keysOfShapes(conditionSchema));
    expect([...(page.inner.get('in a rule') ?? [])].sort()).toEqual(keysOfShapes(ruleSchema));
    expect(page.inner.get('in a plan')).toEqual(['run-on', 'times', 'repeat']);
  });

  it('writes its examples so that they are read', () => {
    const whole = readFileSync('scenarios/templates/one-fault.yaml', 'utf8');
    const snippets = [...page.text.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, snippet]) => snippet);
    expect(snippets.length).toBeGreaterThan(3);
    for (const snippet of snippets) {
      const given = readYaml('snippet.yaml', snippet).data as Record<string, object>;
      const base = readYaml('whole.yaml', whole).data as Record<string, object>;
      const merged = { ...base, ...given, plans: { ...base.plans, ...given.plans } };
      const source = readYaml('merged.yaml', JSON.stringify(merged));
      expect(shapeProblems(source, scenarioSchema)).toEqual([]);
    }
  });

  it('gives an example of each key that may stand there', () => {
    const whole = readYaml('whole.yaml', readFileSync('scenarios/leaves.yaml', 'utf8')).data;
    for (const [key, { example }] of page.keys) {
      if (/^see /.test(example)) continue;
      const written = parse(/`(.+)`/.exec(example)?.[1] ?? example) as unknown;
      const source = readYaml('example.yaml', JSON.stringify(withAt(whole, key.split('.'), written)));
      const wrong = shapeProblems(source, scenarioSchema).filter(({ path }) => samePath(path, key));
      expect(wrong.map(({ message }) => message)).toEqual([]);
    }
  });
});

/** A copy with `value` at a path, groups and lists made on the way. */
function withAt(data: unknown, [first, ...rest]: readonly string[], value: unknown): unknown {
  if (first === undefined) return value;
  const name = first.replace('[]', '');
  const group = typeof data === 'object' && data !== null ? (data as Record<string, unknown>) : {};
  const list = group[name];
  const below = first.endsWith('[]')
    ? [withAt(Array.isArray(list) ? list[0] : {}, rest, value)]
    : withAt(list, rest, value);
  return { ...group, [name]: below };
}

const samePath = (path: readonly (string | number)[], key: string): boolean =>
  path.filter((part) => typeof part === 'string').join('.') === key.replaceAll('[]', '');

describe('the form for editors', () => {
  it('is up to date: npm run schema', () => {
    expect(readFileSync('shared/schema/scenario.schema.json', 'utf8')).toBe(scenarioSchemaText(page.says));
  });
});

describe('codes of findings', () => {
  it('are those that are listed, and each is used', () => {
    const sources = filesUnder(['src', 'shared'], /\.ts$/).filter(
      (path) => !/problemCodes|findingCodes|words\/ids/.test(path),
    );
    const used = sources.flatMap((path) =>
      [...readFileSync(path, 'utf8').matchAll(/'((?:SCN|PRV)\d{3})'/g)].map(([, code]) => code),
    );
    const listed: string[] = [...PROBLEM_CODES, ...Object.keys(findingCodes)];
    expect([...new Set(used)].filter((code) => !listed.includes(code))).toEqual([]);
    expect(PROBLEM_CODES.filter((code) => !used.includes(code))).toEqual([]);
  });
});
