/**
 * Goes by one thing: with the car turning it is looked at for three minutes, and if it is as it should be, nothing is wrong;
 * if not, gas goes in until it is.
 */
import type { Choice } from './choice';
import { connect } from './connect';
import { feed } from './feed';
import { leave } from './leave';
import { mayTouch } from './mayTouch';
import { prepare } from './prepare';
import { decisionOf, say } from './say';
import { startTest, testAsPrinted } from './testAsPrinted';
import type { TidyHands } from './tidyHands';

const LOOKED_S = 180;
const AT_REST_S = 30;
const ALL_CANS = 6;

export interface OneThing {
  /** Lines before the engine turns, such as where a probe goes. */
  readonly ready: readonly string[];
  /** Lines that take it down: a reading, a look. */
  readonly take: readonly string[];
  /** Whether it is as it should be; `outsideK` was read with the air thermometer before. */
  readonly isRight: (hands: TidyHands, outsideK: number) => boolean;
}

const SOUND: Choice = { decision: 'do-not-charge', cause: 'nothing-wrong', repair: [] };
const SHORT: Choice = { decision: 'charge', cause: 'low-charge', repair: [] };

export function byOneThing(hands: TidyHands, { ready, take, isRight }: OneThing): void {
  const { give, wait } = hands;
  prepare(hands);
  if (mayTouch(hands.scenario)) connect(hands, true);
  give('probe-air outside');
  wait(AT_REST_S);
  const outsideK = hands.sees('airThermometer.temperatureK');
  give('note-reading air', ...ready);
  startTest(hands);
  wait(LOOKED_S);
  give(...take);
  const charges = !isRight(hands, outsideK);
  const choice = charges ? SHORT : SOUND;
  say(hands, choice);
  if (charges) {
    connect(hands, true);
    give(...ready);
    feed(hands, { cans: ALL_CANS, isEnough: () => isRight(hands, outsideK) });
    give(...take);
  }
  testAsPrinted(hands, true);
  leave(hands, { charges: true, refers: decisionOf(hands, choice) === 'refer', remains: false });
}
