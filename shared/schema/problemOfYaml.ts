/** What the reader of YAML refuses, as a problem among the others. */
import type { Problem } from './problem.ts';
import type { YamlError } from './readYaml.ts';

const PLACE = /:(\d+):(\d+)$/;
/** Codes by what the reader calls it; all else is a file that cannot be read as YAML. */
const CODES: Readonly<Record<string, string>> = {
  'duplicate-key': 'SCN011',
  alias: 'SCN012',
  tag: 'SCN013',
  'tag-resolve-failed': 'SCN013',
  'second-document': 'SCN014',
  empty: 'SCN015',
  'too-big': 'SCN016',
  'too-long': 'SCN016',
  'line-too-long': 'SCN016',
  'too-deep': 'SCN016',
  'not-finite': 'SCN017',
  'key-not-text': 'SCN018',
  'key-not-allowed': 'SCN018',
  'unseen-letter': 'SCN019',
};
const UNREADABLE = 'SCN010';

export function problemOfYaml({ place, code, text, fix }: YamlError): Problem {
  const [, line, column] = PLACE.exec(place) ?? [];
  const spot = { line: Number(line ?? 1), column: Number(column ?? 1), length: 1 };
  const told = {
    at: place,
    ...spot,
    code: CODES[code] ?? UNREADABLE,
    level: 'error',
    message: text,
  } as const;
  return fix === undefined ? told : { ...told, fix };
}
