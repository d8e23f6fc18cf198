/** What the page is told of a session tried otherwise, and what it may ask. */
import type { Command } from '../plant/commandSpecs';
import type { Finding } from '../scoring/score';
import type { LogEdit } from '../session/whatIf/editLog';
import type { DebriefDomain, Trace } from './debriefModel';

/** How a run ended: score, and what stood in the car. */
export interface WhatIfEnd {
  readonly reported: number;
  readonly passed: boolean;
  readonly domains: readonly DebriefDomain[];
  readonly lastStep: number;
  readonly chargeKg: number;
  readonly highPa: number;
  readonly lowPa: number;
  readonly ventK: number;
  readonly sluggedKg: number;
  readonly ventedKg: number;
}

export interface WhatIfRefused {
  /** Number of the action in the log. */
  readonly number: number;
  readonly command: Command;
  readonly reason: string;
  readonly params: Readonly<Record<string, string>>;
}

export interface WhatIfTold {
  readonly before: WhatIfEnd;
  readonly after: WhatIfEnd;
  /** Findings that went another way or earned another share: as they were, as they are. */
  readonly changed: readonly { readonly before: Finding; readonly after: Finding }[];
  readonly refused: readonly WhatIfRefused[];
  readonly firstDifferentStep: number | null;
  readonly sameState: boolean;
}

export interface WhatIfModel {
  /** In the numbers of the log. */
  readonly edits: () => readonly LogEdit[];
  readonly setEdits: (edits: readonly LogEdit[]) => void;
  /** `preparing`: the session is being made ready; `running`: the trace is coming; `stopped`: what came of it stands. */
  readonly phase: () => 'preparing' | 'idle' | 'running' | 'stopped' | 'told' | 'failed';
  readonly stop: () => void;
  /** With what was stopped. */
  readonly goOn: () => void;
  /** An action, by its number in the log, that is likely to be left out next. */
  readonly expect: (number: number) => void;
  /** As far as it has come; null while nothing is changed. */
  readonly traces: () => readonly Trace[] | null;
  readonly told: () => WhatIfTold | null;
  /** Where the two part, as soon as that is known; null while it is not, and where they never do. */
  readonly apartStep: () => number | null;
  /** Why the last change cannot be made, in words. */
  readonly problem: () => string | null;
  readonly refusalWords: (refused: WhatIfRefused) => string;
}
