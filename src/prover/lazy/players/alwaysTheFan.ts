/** Looks at the condenser's fan, sees it do whatever it does, and fits a new one. */
import { connect } from '../connect';
import { leave } from '../leave';
import { mayTouch } from '../mayTouch';
import { prepare } from '../prepare';
import { decisionOf, mend, say } from '../say';
import { startTest, testAsPrinted } from '../testAsPrinted';
import type { TidyHands } from '../tidyHands';

const LOOKED_S = 60;

export function alwaysTheFan(hands: TidyHands): void {
  const { give, wait, scenario } = hands;
  prepare(hands);
  if (mayTouch(scenario)) connect(hands, false);
  startTest(hands);
  wait(LOOKED_S);
  give('look condenser', 'look fan', 'look fan2');
  const choice = {
    decision: 'do-not-charge',
    cause: 'condenser-fan-dead',
    repair: ['replace fan'],
  } as const;
  say(hands, choice);
  const isMended = mend(hands, choice);
  testAsPrinted(hands, false);
  leave(hands, { charges: false, refers: decisionOf(hands, choice) === 'refer', remains: !isMended });
}
