/** What the worker found in a text: the scenario where its form holds, and every problem with its place. */
import type { Problem } from '../../shared/schema/problem';
import type { ScenarioData } from '../../shared/schema/scenario';

export interface Checked {
  /** The very text that was looked at. */
  readonly text: string;
  /** Null while the text has errors. */
  readonly scenario: ScenarioData | null;
  readonly problems: readonly Problem[];
}
