/**
 * What is wrong with a file a person wrote, each with its place: the form in which `check`, the build and the workshop
 * report. Schema issues become problems here; an unknown key says which known one it is nearest to.
 */
import type { z } from 'zod';
import { nearest } from '../../src/words/nearest';
import { keysAt } from './keysAt.ts';
import type { WithKnownKeys } from './picked.ts';
import { YamlError, type YamlPath, type YamlSource } from './readYaml.ts';

export interface Problem {
  /** `file:line:column`. */
  readonly at: string;
  readonly code: string;
  readonly level: 'error' | 'warning';
  readonly message: string;
}

/** Codes of the form: unknown key, missing key, wrong value. */
const UNKNOWN_KEY = 'SCN001';
const MISSING = 'SCN002';
const WRONG_VALUE = 'SCN003';

export function shapeProblems(source: YamlSource, schema: z.ZodType): Problem[] {
  const result = schema.safeParse(source.data);
  if (result.success) return [];
  return result.error.issues.flatMap((issue) => problemsOf(source, schema, issue));
}

function problemsOf(source: YamlSource, schema: z.ZodType, issue: z.core.$ZodIssue): Problem[] {
  const path = issue.path.map((part) => (typeof part === 'number' ? part : String(part)));
  if (issue.code === 'unrecognized_keys') {
    const known = (issue as WithKnownKeys).known ?? keysAt(schema, path);
    return issue.keys.map((key) => {
      const near = nearest(key, known);
      const hint = near === undefined ? `known here: ${known.join(', ')}` : `did you mean "${near}"?`;
      return error(source.atKey([...path, key]), UNKNOWN_KEY, `unknown key "${key}"; ${hint}`);
    });
  }
  const isMissing = ['invalid_type', 'invalid_value'].includes(issue.code ?? '');
  if (isMissing && valueAt(source.data, path) === undefined)
    return [error(source.at(path), MISSING, `"${String(path.at(-1))}" is missing${choicesOf(issue)}`)];
  const meant = nearestValue(issue, valueAt(source.data, path));
  return [error(source.at(path), WRONG_VALUE, `${path.join('.') || 'file'}: ${issue.message}${meant}`)];
}

const choicesOf = (issue: z.core.$ZodIssue): string =>
  issue.code === 'invalid_value' ? `; one of ${issue.values.map(String).join(', ')}` : '';

/** For one of a closed list of values: what was written, and which it is nearest to. */
function nearestValue(issue: z.core.$ZodIssue, given: unknown): string {
  if (issue.code !== 'invalid_value' || typeof given !== 'string') return '';
  const near = nearest(given, issue.values.map(String));
  return near === undefined ? `; not "${given}"` : `; not "${given}"; did you mean "${near}"?`;
}

const error = (at: string, code: string, message: string): Problem => ({ at, code, level: 'error', message });

function valueAt(data: unknown, path: YamlPath): unknown {
  let here = data;
  for (const part of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<string | number, unknown>)[part];
  }
  return here;
}

/** For the build: the data when the form is right; else a `YamlError` that starts with the first problem. */
export function checkedData(source: YamlSource, schema: z.ZodType): unknown {
  const [first, ...rest] = shapeProblems(source, schema);
  if (first === undefined) return source.data;
  const others = rest.map(({ at, code, message }) => `\n${at} ${code} ${message}`);
  throw new YamlError(first.at, first.code, `${first.message}${others.join('')}`);
}
