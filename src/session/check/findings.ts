/** Findings of `check` with the place they stand at. Codes: 0xx form, 1xx ids, 2xx physics and plans, 3xx teaching. */
import type { Problem } from '../../../shared/schema/problems';
import type { YamlPath, YamlSource } from '../../../shared/schema/readYaml';
import { nearest } from '../../words/nearest';
import { word } from '../../words/words';

export interface Findings {
  error(path: YamlPath, code: string, message: string): void;
  warning(path: YamlPath, code: string, message: string): void;
  readonly list: readonly Problem[];
}

export function findingsIn(source: YamlSource): Findings {
  const list: Problem[] = [];
  const put = (level: Problem['level']) => (path: YamlPath, code: string, message: string) => {
    list.push({ at: source.at(path), code, level, message });
  };
  return { error: put('error'), warning: put('warning'), list };
}

/** `what`, then the known id nearest to it, or all there are. */
export function withHint(what: string, id: string, known: readonly string[]): string {
  const near = nearest(id, known);
  if (near !== undefined) return word('check.near', { what, near });
  return word('check.known', { what, known: known.join(', ') || word('check.none') });
}
