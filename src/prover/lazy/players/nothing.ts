/** Leaves the car as it came and says that nothing is wrong with it. */
import { blindly } from '../blindly';
import type { TidyHands } from '../tidyHands';

export function nothing(hands: TidyHands): void {
  blindly(hands, () => ({ decision: 'do-not-charge', cause: 'nothing-wrong', repair: [] }));
}
