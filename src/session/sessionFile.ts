/** The session file read back. Throws `RangeError` that says what is wrong and where. */
import { sessionFileSchema } from '../../shared/schema/session';
import type { SessionFile } from './sessionFileText';

export function readSessionFile(text: string): SessionFile {
  const result = sessionFileSchema.safeParse(JSON.parse(text));
  if (result.success) return result.data as unknown as SessionFile;
  const [issue] = result.error.issues;
  throw new RangeError(`${issue.path.join('.')}: ${issue.message}`);
}
