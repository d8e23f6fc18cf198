/**
 * What a cause asks for: whether the loop is short, and which parts are renewed. Causes that ask for the same work are one
 * decision, and need not be told apart: a valve stuck shut and one whose bulb is empty are both a new valve. What takes a
 * service of the charge stands for itself. All leaks and a short loop are one to any reading.
 */
import { faultIds, faultOf } from '../../faults/registry';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { causesIn } from '../../suspects/causes';
import { readsAsShort, SHORT } from '../../suspects/proven';

/** By suspect, which may be two causes; `known` are the parts and lines of this car. */
export function decisionOf(suspect: string, known: ReadonlySet<string>): string {
  const each = causesIn(suspect).map((cause) => {
    if (cause === NOTHING_WRONG) return cause;
    if (readsAsShort(cause)) return SHORT;
    if (!faultIds.includes(cause)) return cause;
    const parts = faultOf(cause).clearedBy.filter((part) => known.has(part));
    return parts.length > 0 ? parts.join(',') : cause;
  });
  return [...new Set(each)].sort().join('+');
}
