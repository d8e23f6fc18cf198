/**
 * What a schema finds wrong with a file, each with its place, and what was meant where one thing is near: a known key, one of
 * a closed list of values, a unit, the level a key belongs to.
 */
import type { z } from 'zod';
import { nearest } from '../../src/words/nearest';
import { formMessage } from './formMessage.ts';
import { keysAt } from './keysAt.ts';
import { numberMeant, withUnit } from './numberMeant.ts';
import type { WithKnownKeys } from './picked.ts';
import type { Fix, Problem } from './problem.ts';
import type { WithMeant } from './quantity.ts';
import { YamlError, type YamlPath, type YamlPlace, type YamlSource } from './readYaml.ts';

/** Codes of the form: unknown key, missing key, wrong value. */
const UNKNOWN_KEY = 'SCN001';
const MISSING = 'SCN002';
const WRONG_VALUE = 'SCN003';

/** Told at once; who has more begins with these. */
const MOST_ISSUES = 100;
const MOST_KEYS = 20;

export interface FormProblem extends Problem {
  /** Of what is wrong; of the group for a key it lacks. */
  readonly path: YamlPath;
}

export function shapeProblems(source: YamlSource, schema: z.ZodType): FormProblem[] {
  const result = schema.safeParse(source.data);
  if (result.success) return [];
  return result.error.issues.slice(0, MOST_ISSUES).flatMap((issue) => problemsOf(source, schema, issue));
}

function problemsOf(source: YamlSource, schema: z.ZodType, issue: z.core.$ZodIssue): FormProblem[] {
  const path = issue.path.map((part) => (typeof part === 'number' ? part : String(part)));
  const given = valueAt(source.data, path);
  if (issue.code === 'unrecognized_keys') {
    const known = (issue as WithKnownKeys).known ?? keysAt(schema, path);
    return issue.keys.slice(0, MOST_KEYS).map((key) => unknownKey(source, schema, [...path, key], known));
  }
  const isMissing = ['invalid_type', 'invalid_value', 'custom'].includes(issue.code ?? '');
  if (isMissing && given === undefined && path.length > 0) return [missing(source, path, issue)];
  const meant = meantBy(issue, given, () => besides(source.data, path));
  const inside = given === null ? keysAt(schema, path) : [];
  const known = inside.length > 0 ? `; known here: ${inside.join(', ')}` : '';
  const said = `${path.join('.') || 'file'}: ${formMessage(issue, given)}${known}`;
  const hint = meant === undefined ? '' : `; did you mean "${meant}"?`;
  const fix = meant === undefined ? undefined : fixOfValue(source, path, meant);
  return [problem(source, path, source.placeOf(path), WRONG_VALUE, `${said}${hint}`, fix)];
}

/** A key nobody knows here: a slip, or one that stands too deep. */
function unknownKey(
  source: YamlSource,
  schema: z.ZodType,
  path: YamlPath,
  all: readonly string[],
): FormProblem {
  const key = String(path.at(-1));
  const beside = Object.keys((valueAt(source.data, path.slice(0, -1)) ?? {}) as object);
  const free = all.filter((known) => !beside.includes(known));
  const near = nearest(key, free);
  const place = source.keyPlaceOf(path);
  const say = (hint: string, fix?: Fix): FormProblem =>
    problem(source, path, place, UNKNOWN_KEY, `unknown key "${key}"; ${hint}`, fix);
  if (near !== undefined) return say(`did you mean "${near}"?`, { at: place, to: near });
  const above = levelOf(source, schema, path);
  if (above !== undefined)
    return say(above === '' ? OUTERMOST : `it belongs under "${above}"; it is indented too far`);
  const under = groupBeside(source, schema, path);
  if (under !== undefined) return say(`it belongs under "${under}"; indent it`);
  return say(`known here: ${free.join(', ') || 'none'}`);
}

const OUTERMOST = 'it belongs at the left margin; it is indented too far';

/** The level further out that knows this key and lacks it; the outermost is ''. */
function levelOf(source: YamlSource, schema: z.ZodType, path: YamlPath): string | undefined {
  const key = String(path.at(-1));
  for (let depth = path.length - 2; depth >= 0; depth--) {
    const level = path.slice(0, depth);
    const there = valueAt(source.data, level);
    const lacks = typeof there === 'object' && there !== null && !Object.hasOwn(there, key);
    if (lacks && keysAt(schema, level).includes(key)) return level.join('.');
  }
  return undefined;
}

/** The group beside this key that knows it and lacks it; the nearest one above. */
function groupBeside(source: YamlSource, schema: z.ZodType, path: YamlPath): string | undefined {
  const level = path.slice(0, -1);
  const key = String(path.at(-1));
  const beside = Object.entries((valueAt(source.data, level) ?? {}) as Readonly<Record<string, unknown>>);
  const above = beside
    .slice(
      0,
      Math.max(
        0,
        beside.findIndex(([name]) => name === key),
      ),
    )
    .reverse();
  const lacks = (group: unknown): boolean =>
    group === null || (typeof group === 'object' && !Object.hasOwn(group as object, key));
  return above.find(([name, group]) => lacks(group) && keysAt(schema, [...level, name]).includes(key))?.[0];
}

/** A key that is not there, or only within a text, where nobody reads it as a key. */
function missing(source: YamlSource, path: YamlPath, issue: z.core.$ZodIssue): FormProblem {
  const key = String(path.at(-1));
  const choices = issue.code === 'invalid_value' ? `; one of ${issue.values.map(String).join(', ')}` : '';
  const swallowed = path.length === 1 ? lineWithin(source.text, key) : undefined;
  const hint = swallowed === undefined ? '' : '; it is here, indented too far, and so part of the text above';
  const place = swallowed ?? source.placeOf(path);
  return problem(source, path, place, MISSING, `"${key}" is missing${choices}${hint}`);
}

/** The one line that has this key in it, not at the left margin. */
function lineWithin(text: string, key: string): YamlPlace | undefined {
  const found = text.split('\n').flatMap((line, at) => {
    const [, lead] = /^(\s+)([\w-]+):(?:\s|$)/.exec(line) ?? [];
    if (lead === undefined || !line.trimStart().startsWith(`${key}:`)) return [];
    return [{ line: at + 1, column: lead.length + 1, length: key.length }];
  });
  return found.length === 1 ? found[0] : undefined;
}

/** One of a closed list that is near, or what the schema itself takes it for. */
function meantBy(
  issue: z.core.$ZodIssue,
  given: unknown,
  beside: () => readonly string[],
): string | undefined {
  if (issue.code === 'custom') return (issue as WithMeant).params?.meantBeside?.(beside());
  if (issue.code === 'invalid_type')
    return ['number', 'int'].includes(issue.expected) ? numberMeant(given) : undefined;
  if (issue.code !== 'invalid_value' || !['string', 'boolean', 'number'].includes(typeof given))
    return undefined;
  const known = issue.values.map(String);
  return known.length === 1 ? known[0] : (withUnit(given, known) ?? nearest(String(given), known));
}

function fixOfValue(source: YamlSource, path: YamlPath, to: string): Fix | undefined {
  const given = valueAt(source.data, path);
  const at = source.partOf(path, String(given)) ?? source.placeOf(path);
  return at.length > 0 ? { at, to } : undefined;
}

function problem(
  source: YamlSource,
  path: YamlPath,
  place: YamlPlace,
  code: string,
  message: string,
  fix?: Fix,
): FormProblem {
  const at = `${source.file}:${place.line}:${place.column}`;
  return { at, ...place, code, level: 'error', message, path, ...(fix ? { fix } : {}) };
}

export function valueAt(data: unknown, path: YamlPath): unknown {
  let here = data;
  for (const part of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, part)) return undefined;
    here = (here as Record<string | number, unknown>)[part];
  }
  return here;
}

/** Texts of the same group, the nearest to this key first. */
function besides(data: unknown, path: YamlPath): string[] {
  const group = valueAt(data, path.slice(0, -1));
  if (typeof group !== 'object' || group === null || Array.isArray(group)) return [];
  const here = Object.keys(group).indexOf(String(path.at(-1)));
  const far = Object.values(group).map((value, at) => ({ value, far: Math.abs(at - here) }));
  const texts = far.sort((a, b) => a.far - b.far).map(({ value }) => value);
  return texts.filter((value) => typeof value === 'string');
}

/** For the build: the data when the form is right; else a `YamlError` that starts with the first problem. */
export function checkedData(source: YamlSource, schema: z.ZodType): unknown {
  const [first, ...rest] = shapeProblems(source, schema);
  if (first === undefined) return source.data;
  const others = rest.map(({ at, code, message }) => `\n${at} ${code} ${message}`);
  throw new YamlError(first.at, first.code, `${first.message}${others.join('')}`);
}
