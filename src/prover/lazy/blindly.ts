/** Chooses before anything was read, and does the whole safe routine round it: what only a guess is worth. */
import type { Choice } from './choice';
import { connect } from './connect';
import { type Feeding, feed } from './feed';
import { leave } from './leave';
import { mayTouch } from './mayTouch';
import { prepare } from './prepare';
import { decisionOf, mend, say } from './say';
import { testAsPrinted } from './testAsPrinted';
import type { TidyHands } from './tidyHands';

export function blindly(hands: TidyHands, choose: (hands: TidyHands) => Choice, feeding?: Feeding): void {
  prepare(hands);
  const choice = choose(hands);
  const charges = feeding !== undefined;
  say(hands, choice);
  const isMended = mend(hands, choice);
  if (charges || mayTouch(hands.scenario)) connect(hands, charges);
  if (feeding) feed(hands, feeding);
  testAsPrinted(hands, charges);
  leave(hands, {
    charges,
    refers: decisionOf(hands, choice) === 'refer',
    remains: !charges && !isMended && choice.cause !== 'nothing-wrong',
  });
}
