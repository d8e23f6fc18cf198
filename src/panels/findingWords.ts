/**
 * A finding's sentence for whoever did the job. Where no hose ever was on the car nobody could read a pressure, and a clause
 * that tells one beside the point is left out; where the sentence is about it, it stays.
 */
import { messageOf, sayFinding, type Telling } from '../scoring/sayFinding';
import type { WriteQuantity } from '../session/writeQuantity';
import { say } from '../words/words';

const MARK = '\u0001';
/** From the last comma or semicolon to a pressure that ends a clause. */
const CLAUSE = new RegExp(`[;,] [^;,()${MARK}]*${MARK}[^;,().${MARK}]*(?=[.;)])`, 'gu');

export function findingWords(finding: Telling, write: WriteQuantity, couldRead: boolean): string {
  const whole = sayFinding(finding, write);
  if (couldRead) return whole;
  const marked = say(messageOf(finding, (quantity) => (quantity.unit === 'Pa' ? MARK : write(quantity))));
  const short = marked.replace(CLAUSE, '');
  return short.includes(MARK) ? whole : short;
}
