/** What a schema's finding says to somebody who never programmed. */
import type { z } from 'zod';

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'a group of keys',
  record: 'a group of keys',
  array: 'a list',
  null: 'nothing',
  undefined: 'nothing',
};
const kindOf = (given: unknown): string => {
  if (given === null || given === undefined) return 'nothing';
  return KINDS[Array.isArray(given) ? 'array' : typeof given] ?? typeof given;
};

export function formMessage(issue: z.core.$ZodIssue, given: unknown): string {
  switch (issue.code) {
    case 'invalid_type':
      return `expected ${KINDS[issue.expected] ?? issue.expected}, found ${kindOf(given)}`;
    case 'invalid_value':
      return `one of ${issue.values.map(String).join(', ')}; not ${shown(given)}`;
    case 'too_small':
      return `${shown(given)} is too ${sizeOf(issue.origin, 'small')}; at least ${issue.minimum}${countOf(issue.origin)}`;
    case 'too_big':
      return `${shown(given)} is too ${sizeOf(issue.origin, 'big')}; at most ${issue.maximum}${countOf(issue.origin)}`;
    case 'invalid_key':
      return 'a key that cannot be one';
    default:
      return issue.message;
  }
}

const LONGEST = 40;

function shown(given: unknown): string {
  if (typeof given === 'number' || typeof given === 'boolean') return String(given);
  if (typeof given !== 'string') return kindOf(given);
  return given.length <= LONGEST ? `"${given}"` : `"${given.slice(0, LONGEST)}…"`;
}

const sizeOf = (origin: string, way: 'small' | 'big'): string => {
  if (origin === 'string' || origin === 'array') return way === 'small' ? 'short' : 'long';
  return way;
};

const countOf = (origin: string): string => {
  if (origin === 'string') return ' letters';
  return origin === 'array' ? ' lines' : '';
};
