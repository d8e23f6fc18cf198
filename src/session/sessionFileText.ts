/** The session file as text. A page that only saves one loads nothing to read them. */
import { canonicalJson } from './canonicalJson';
import type { SessionLog } from './corePort';

export interface ShownLast {
  readonly score: number;
  readonly reported: number;
  readonly logHash: string;
  readonly stateHash: string;
  readonly engineHash: string;
  /** The score was made with what ghost cars said of the readings; not so where nothing is said. */
  readonly weighed?: boolean;
}

/** What the trainee thought, in their own words: never scored. */
export interface Thought {
  readonly surprised: string;
  readonly otherwise: string;
}

export interface SessionFile {
  readonly log: SessionLog;
  readonly last: ShownLast;
  readonly thought?: Thought;
}

export const sessionFileText = (file: SessionFile): string => `${canonicalJson(file)}\n`;
