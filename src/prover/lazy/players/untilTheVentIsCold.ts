/** Goes by the air at the centre vent alone: warmer than printed, gas goes in until it is not. */
import { byOneThing } from '../byOneThing';
import type { TidyHands } from '../tidyHands';
import { windowOf } from '../windowOf';

export function untilTheVentIsCold(hands: TidyHands): void {
  const { vehicle } = hands.scenario.data;
  byOneThing(hands, {
    ready: ['probe-air centre-vent'],
    take: ['note-reading air'],
    isRight: ({ sees }, outsideK) =>
      sees('airThermometer.temperatureK') <= windowOf(vehicle, outsideK).ventTo,
  });
}
