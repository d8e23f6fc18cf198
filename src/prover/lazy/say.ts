/**
 * A choice put on the card, and its repair done with the engine off. Who is not trained for the car says no more of the
 * charge than that it is for somebody else.
 */
import type { Choice } from './choice';
import { mayTouch } from './mayTouch';
import type { TidyHands } from './tidyHands';

/** Until no fan turns any more. */
const STANDS_S = 60;

export function decisionOf({ scenario }: TidyHands, { decision }: Choice): Choice['decision'] {
  return decision !== 'charge' && !mayTouch(scenario) ? 'refer' : decision;
}

export function say(hands: TidyHands, choice: Choice): void {
  hands.give(`decide ${decisionOf(hands, choice)}`, `diagnose ${choice.cause} sure`);
}

/** Whether anything of it was taken. */
export function mend({ give, wait }: TidyHands, { repair }: Choice): boolean {
  if (repair.length === 0) return false;
  give('ac off', 'engine 0');
  wait(STANDS_S);
  return repair.map((line) => give(line)).some(Boolean);
}
