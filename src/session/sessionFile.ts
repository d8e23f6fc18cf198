/** The session file as text, and back. Reading throws `RangeError` that says what is wrong and where. */
import { sessionFileSchema } from '../../shared/schema/session';
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

export interface SessionFile {
  readonly log: SessionLog;
  readonly last: ShownLast;
}

export const sessionFileText = (file: SessionFile): string => `${canonicalJson(file)}\n`;

export function readSessionFile(text: string): SessionFile {
  const result = sessionFileSchema.safeParse(JSON.parse(text));
  if (result.success) return result.data as unknown as SessionFile;
  const [issue] = result.error.issues;
  throw new RangeError(`${issue.path.join('.')}: ${issue.message}`);
}
