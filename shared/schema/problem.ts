/**
 * One thing that is wrong with a file a person wrote, with its place: the form in which `check`, the build and the workshop
 * report. A fix is a stretch of one line and what belongs there instead; it is there only where one thing can be meant.
 */
import type { YamlPlace } from './readYaml.ts';

export interface Fix {
  readonly at: YamlPlace;
  /** In the file's own writing, quotes and all. */
  readonly to: string;
}

export interface Problem extends YamlPlace {
  /** `file:line:column`. */
  readonly at: string;
  /** Stable; what each means stands in problemCodes.ts. */
  readonly code: string;
  readonly level: 'error' | 'warning';
  readonly message: string;
  readonly fix?: Fix;
}
