/**
 * Takes every reading down as the routine has it, looks at none of them, and answers by something else; what was mended is
 * tested again.
 */
import type { Choice } from './choice';
import { connect } from './connect';
import { leave } from './leave';
import { mayTouch } from './mayTouch';
import { prepare } from './prepare';
import { decisionOf, mend, say } from './say';
import { testAsPrinted } from './testAsPrinted';
import type { TidyHands } from './tidyHands';

export function byRoutine(hands: TidyHands, choose: (hands: TidyHands) => Choice): void {
  prepare(hands);
  if (mayTouch(hands.scenario)) connect(hands, false);
  testAsPrinted(hands, false);
  const choice = choose(hands);
  say(hands, choice);
  const isMended = mend(hands, choice);
  if (isMended) testAsPrinted(hands, false);
  leave(hands, {
    charges: false,
    refers: decisionOf(hands, choice) === 'refer',
    remains: !isMended && choice.cause !== 'nothing-wrong',
  });
}
