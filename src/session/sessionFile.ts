/** The session file read back. Throws `SessionFileError` that says what is wrong and where. */
import type { z } from 'zod';
import { formMessage } from '../../shared/schema/formMessage';
import { type JsonPlace, jsonSlip, placeInJson } from '../../shared/schema/jsonPlaces';
import { valueAt } from '../../shared/schema/problems';
import { sessionFileSchema } from '../../shared/schema/session';
import { withoutMark } from '../../shared/schema/yamlText';
import type { SessionFile } from './sessionFileText';

/** `message` is `line:column what is wrong`. */
export class SessionFileError extends RangeError {
  override readonly name = 'SessionFileError';
  constructor({ line, column }: JsonPlace, what: string) {
    super(`${line}:${column} ${what}`);
  }
}

export function readSessionFile(given: string): SessionFile {
  const text = withoutMark(given);
  const result = sessionFileSchema.safeParse(dataOf(text));
  if (result.success) return result.data as unknown as SessionFile;
  throw problemOf(text, result.error.issues[0]);
}

function dataOf(text: string): unknown {
  if (text.trim() === '') throw new SessionFileError({ line: 1, column: 1 }, 'the file holds nothing');
  try {
    return JSON.parse(text);
  } catch {
    throw new SessionFileError(
      jsonSlip(text) ?? { line: 1, column: 1 },
      'this cannot be read; a session file is JSON, as it was saved',
    );
  }
}

function problemOf(text: string, issue: z.core.$ZodIssue): SessionFileError {
  const path = issue.path.map((part) => (typeof part === 'number' ? part : String(part)));
  if (issue.code === 'unrecognized_keys') {
    const key = [...path, issue.keys[0]];
    return new SessionFileError(placeInJson(text, key, 'key'), `unknown key "${key.join('.')}"`);
  }
  const place = placeInJson(text, path);
  const given = valueAt(JSON.parse(text), path);
  if (given === undefined) return new SessionFileError(place, `"${path.join('.')}" is missing`);
  return new SessionFileError(place, `${path.join('.') || 'file'}: ${formMessage(issue, given)}`);
}
