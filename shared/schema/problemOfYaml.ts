/** What the reader of YAML refuses, as a problem among the others. */
import type { Problem } from './problem.ts';
import type { YamlError } from './readYaml.ts';

const PLACE = /:(\d+):(\d+)$/;

export function problemOfYaml({ place, code, text }: YamlError): Problem {
  const [, line, column] = PLACE.exec(place) ?? [];
  const spot = { line: Number(line ?? 1), column: Number(column ?? 1), length: 1 };
  return { at: place, ...spot, code, level: 'error', message: text };
}
