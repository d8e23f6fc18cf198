/** Findings of `check` with the place they stand at. Codes: 0xx form, 1xx ids, 2xx physics and plans, 3xx teaching. */
import type { Problem } from '../../../shared/schema/problems';
import type { YamlPath, YamlSource } from '../../../shared/schema/readYaml';

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
