/**
 * Takes all readings down and looks at none of them: the answer is read out of the file's text, the cause and the action
 * whose words stand there most. What passes so is given away before a hose is touched.
 */
import { faultOf } from '../../../faults/registry';
import { NOTHING_WRONG } from '../../../plant/faultBook';
import { byRoutine } from '../byRoutine';
import type { Choice } from '../choice';
import { causeInText } from '../text/causeInText';
import { decisionInText } from '../text/decisionInText';
import { visibleWords } from '../text/visibleWords';
import type { TidyHands } from '../tidyHands';

export function visibleText(hands: TidyHands): void {
  byRoutine(hands, read);
}

function read({ core, scenario: { data } }: TidyHands): Choice {
  const text = visibleWords(data);
  const cause = causeInText(text, core.choices('cause'), data.language);
  const read = decisionInText(text);
  return {
    // whoever names something else than a lack of gas has no reason to add any
    decision: read === 'charge' && !isLack(cause) ? 'do-not-charge' : read,
    cause,
    repair: mending(cause, core.choices('replaceable')),
  };
}

const isLack = (cause: string): boolean => cause === 'low-charge' || /^leak(-|$)/.test(cause);

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
