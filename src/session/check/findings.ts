/** Findings of `check` with the place they stand at. What the codes mean stands in problemCodes.ts. */
import type { Problem } from '../../../shared/schema/problem';
import type { ProblemCode } from '../../../shared/schema/problemCodes';
import type { YamlPath, YamlSource } from '../../../shared/schema/readYaml';
import { nearest } from '../../words/nearest';
import { word } from '../../words/words';

/** What is written wrongly, and what was meant. */
export interface Meant {
  readonly part: string;
  readonly to: string;
}

export interface Findings {
  /** With `meant`, the place is that of what is written wrongly, and a fix is offered. */
  error(path: YamlPath, code: ProblemCode, message: string, meant?: Meant | null): void;
  warning(path: YamlPath, code: ProblemCode, message: string): void;
  /** An id that is not among `known`: told with the nearest of them. */
  unknown(path: YamlPath, code: ProblemCode, what: string, id: string, known: readonly string[]): void;
  readonly list: readonly Problem[];
  /** First keys of the paths that errors were told of. */
  readonly errorsUnder: ReadonlySet<string | number>;
}

export function findingsIn(source: YamlSource): Findings {
  const list: Problem[] = [];
  const errorsUnder = new Set<string | number>();
  const put = (
    level: Problem['level'],
    path: YamlPath,
    code: ProblemCode,
    message: string,
    meant?: Meant | null,
  ) => {
    if (level === 'error' && path.length > 0) errorsUnder.add(path[0]);
    const part = meant ? source.partOf(path, meant.part) : undefined;
    const place = part ?? source.placeOf(path);
    const at = `${source.file}:${place.line}:${place.column}`;
    const fix = part && meant ? { fix: { at: part, to: meant.to } } : {};
    list.push({ at, ...place, code, level, message, ...fix });
  };
  return {
    error: (path, code, message, meant) => put('error', path, code, message, meant),
    warning: (path, code, message) => put('warning', path, code, message),
    unknown: (path, code, what, id, known) => {
      const near = nearest(id, known);
      const meant = near === undefined ? null : { part: id, to: near };
      put('error', path, code, withHint(what, id, known), meant);
    },
    list,
    errorsUnder,
  };
}

/** `what`, then what was meant; a whole sentence loses its stop, since more follows. */
export const withNear = (what: string, near: string): string =>
  word('check.near', { what: what.replace(/\.$/, ''), near });

/** `what`, then the known id nearest to it, or all there are. */
function withHint(what: string, id: string, known: readonly string[]): string {
  const near = nearest(id, known);
  if (near !== undefined) return withNear(what, near);
  return word('check.known', { what, known: known.join(', ') || word('check.none') });
}
