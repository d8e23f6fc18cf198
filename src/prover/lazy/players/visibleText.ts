/**
 * Reads the file's visible text - complaint, what is to be delivered, papers, the owner's answers, hints - and takes the
 * cause and the action whose words stand there most.
 */
import { faultOf } from '../../../faults/registry';
import { blindly } from '../blindly';
import type { Choice } from '../choice';
import { causeInText } from '../text/causeInText';
import { decisionInText } from '../text/decisionInText';
import { visibleWords } from '../text/visibleWords';
import type { TidyHands } from '../tidyHands';

const NOTHING_WRONG = 'nothing-wrong';

export function visibleText(hands: TidyHands): void {
  blindly(hands, read);
}

function read({ core, scenario: { data } }: TidyHands): Choice {
  const text = visibleWords(data);
  const cause = causeInText(text, core.choices('cause'), data.language);
  return { decision: decisionInText(text), cause, repair: mending(cause, core.choices('replaceable')) };
}

/** A new part for what was read, or water for dirt. */
function mending(cause: string, parts: readonly string[]): readonly string[] {
  if (cause === NOTHING_WRONG) return [];
  const { clearedBy, cleanedAt = [] } = faultOf(cause);
  if (cleanedAt.length > 0) return cleanedAt.map((part) => `clean ${part}`);
  return clearedBy
    .filter((part) => parts.includes(part))
    .map((part) => `replace ${part}`)
    .slice(0, 1);
}
