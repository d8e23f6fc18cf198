/** One can into every car, and too little refrigerant is what it had. */
import { blindly } from '../blindly';
import type { TidyHands } from '../tidyHands';

export function chargeAnyway(hands: TidyHands): void {
  blindly(hands, () => ({ decision: 'charge', cause: 'low-charge', repair: [] }), { cans: 1 });
}
