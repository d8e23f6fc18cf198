/** Which keys of a file have the right form and ids so far, so that a check knows whether it can go by them. */
import type { FormProblem } from '../../../shared/schema/problems';
import type { YamlPath } from '../../../shared/schema/readYaml';
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { Findings } from './findings';

type Key = keyof ScenarioData;

export interface Sound {
  /** True where nothing is known against any of these keys of the file, or what stands below them. */
  (...keys: readonly Key[]): boolean;
  /** True where nothing in the form speaks against what stands at `path`. */
  readonly at: (path: YamlPath) => boolean;
}

export function soundOf(data: unknown, form: readonly Partial<FormProblem>[], findings: Findings): Sound {
  const isGroup = typeof data === 'object' && data !== null && !Array.isArray(data);
  const wrong = form.flatMap(({ path }) => (path === undefined ? [] : [path]));
  const sound = (...keys: readonly Key[]): boolean =>
    isGroup && keys.every((key) => !wrong.some(([first]) => first === key) && !findings.errorsUnder.has(key));
  const at = (path: YamlPath): boolean => isGroup && !wrong.some((one) => touches(one, path));
  return Object.assign(sound, { at });
}

/** One lies on the way to the other. */
const touches = (a: YamlPath, b: YamlPath): boolean => {
  const shared = Math.min(a.length, b.length);
  return a.slice(0, shared).every((part, at) => part === b[at]);
};
