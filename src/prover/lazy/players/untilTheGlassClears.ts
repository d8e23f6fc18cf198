/** Goes by the bubbles in the sight glass alone; by the vent where there is no glass. */
import { byOneThing } from '../byOneThing';
import type { TidyHands } from '../tidyHands';
import { untilTheVentIsCold } from './untilTheVentIsCold';

const BUBBLES = 'sightGlass.bubblesRatio';

export function untilTheGlassClears(hands: TidyHands): void {
  if (Number.isNaN(hands.sees(BUBBLES))) untilTheVentIsCold(hands);
  else byOneThing(hands, { ready: [], take: ['look drier'], isRight: ({ sees }) => sees(BUBBLES) === 0 });
}
