/** Draws a fault that a new part would mend, fits that part and names the fault. */
import { faultOf } from '../../../faults/registry';
import { keyedUniform } from '../../../numerics/keyedRandom';
import { NOTHING_WRONG } from '../../../plant/faultBook';
import { blindly } from '../blindly';
import type { Choice } from '../choice';
import type { TidyHands } from '../tidyHands';

export function swapParts(hands: TidyHands): void {
  blindly(hands, drawn);
}

function drawn({ core, seed, scenario: { data } }: TidyHands): Choice {
  const parts = core.choices('replaceable');
  const mending = (cause: string): readonly string[] =>
    cause === NOTHING_WRONG ? [] : faultOf(cause).clearedBy.filter((part) => parts.includes(part));
  const pick = <T>(from: readonly T[], purpose: string): T =>
    from[Math.floor(from.length * keyedUniform(seed, purpose, data.id, 0))];
  const causes = core.choices('cause').filter((cause) => mending(cause).length > 0);
  const cause = pick(causes, 'swapped cause');
  const part = pick(mending(cause), 'swapped part');
  return { decision: 'do-not-charge', cause, repair: [`replace ${part}`] };
}
