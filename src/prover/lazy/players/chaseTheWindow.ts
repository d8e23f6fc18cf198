/** Goes by the low needle alone: under its window gas goes in until it is in it, and in it or over it the car is full. */
import { byOneThing } from '../byOneThing';
import type { TidyHands } from '../tidyHands';
import { waysOf } from '../ways';
import { windowOf } from '../windowOf';

const SIGNALS = {
  'charging-gauge': 'chargingGauge.gaugePressurePa',
  'low-gauge': 'lowGauge.gaugePressurePa',
} as const;

export function chaseTheWindow(hands: TidyHands): void {
  const { data } = hands.scenario;
  const channel = waysOf(hands.scenario, true).lowChannel ?? 'low-gauge';
  byOneThing(hands, {
    ready: [],
    take: [`note-reading ${channel}`],
    isRight: ({ sees }, outsideK) => sees(SIGNALS[channel]) >= windowOf(data.vehicle, outsideK).lowFrom,
  });
}
