/** Name of a joint (`LINE-PART`) by the names of its line and its part; null for any other id. */
import { isWordId, say, word } from '../words/words';

export function jointName(id: string): string | null {
  for (let cut = id.indexOf('-'); cut >= 0; cut = id.indexOf('-', cut + 1)) {
    const line = `name.line.${id.slice(0, cut)}`;
    const part = `name.part.${id.slice(cut + 1)}`;
    if (isWordId(line) && isWordId(part)) {
      return word('name.joint', { line: say({ id: line as never }), part: say({ id: part as never }) });
    }
  }
  return null;
}
