/** What page and worker of the workshop say to each other. Every answer carries the number of what it answers. */
import type { Problem } from '../../../shared/schema/problem';
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { DisplayUnits } from '../../instruments/displayUnits';
import type { NumberMarks } from '../../units/format';
import type { Changes } from '../edit/changesFor';
import type { FormValues } from '../edit/formOf';
import type { Wish } from '../edit/wish';
import type { Vocabulary } from './vocabulary';

/** Ids that this scenario's car and bench have, by set; of the plant's sets, and `signal` and `rule`. */
export type Choices = Readonly<Record<string, readonly string[]>>;

export interface Looked {
  /** Null where the text cannot be read at all. */
  readonly form: FormValues | null;
  /** Null while the text has errors. */
  readonly scenario: ScenarioData | null;
  readonly problems: readonly Problem[];
  /** Null while the text has errors. */
  readonly choices: Choices | null;
}

/** How the page speaks: its language, its marks in numbers, and the units it writes in. */
export interface Spoken {
  readonly language: string;
  readonly marks: NumberMarks;
  readonly units: DisplayUnits;
}

export type Request = { readonly number: number; readonly spoken: Spoken } & (
  | { readonly ask: 'vocabulary' }
  /** Everything but the scenario's own plans being played. */
  | { readonly ask: 'look'; readonly text: string }
  /** All that `check` looks at; takes as long as playing three plans. */
  | { readonly ask: 'whole'; readonly text: string }
  | { readonly ask: 'change'; readonly text: string; readonly wish: Wish }
);

export type Answer = { readonly number: number } & (
  | { readonly gives: 'vocabulary'; readonly vocabulary: Vocabulary }
  | { readonly gives: 'look'; readonly looked: Looked }
  | { readonly gives: 'whole'; readonly problems: readonly Problem[] }
  | { readonly gives: 'change'; readonly changes: Changes | null }
  | { readonly gives: 'nothing'; readonly failed: string }
);
