/** One can first, then a hand at the vent: cold, it was short of gas; still warm, the compressor must be weak. */
import { connect } from '../connect';
import { feed } from '../feed';
import { leave } from '../leave';
import { prepare } from '../prepare';
import { testAsPrinted } from '../testAsPrinted';
import type { TidyHands } from '../tidyHands';
import { windowOf } from '../windowOf';

const AT_REST_S = 30;

export function oneCanThenLook(hands: TidyHands): void {
  const { give, wait, sees, scenario } = hands;
  prepare(hands);
  give('probe-air outside');
  wait(AT_REST_S);
  const outsideK = sees('airThermometer.temperatureK');
  give('note-reading air', 'decide charge');
  connect(hands, true);
  feed(hands, { cans: 1 });
  testAsPrinted(hands, true);
  const isCold = sees('airThermometer.temperatureK') <= windowOf(scenario.data.vehicle, outsideK).ventTo;
  give(`diagnose ${isCold ? 'low-charge' : 'weak-compressor'} likely`);
  leave(hands, { charges: true, refers: false, remains: !isCold });
}
