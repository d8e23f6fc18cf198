/**
 * One line on what is in the hand, where it may go and what would come of it. Places are told as they are seen, by width
 * and place; which side a port belongs to is never said.
 */
import type { Hazard, Layout } from '../../layout/layout';
import { portByPlace } from '../../twin/placeNames';
import { type WordId, word } from '../../words/words';
import type { BayFrame } from '../bayFrame';
import type { Hand } from '../gesture/handGesture';
import type { HoseDanger } from '../gesture/hoseDanger';
import type { Ready } from '../hands';
import { CAN, hoseOfCoupler, inletOfEnd, SCALE } from '../itemIds';
import { couplerName } from './names';

/** What a danger does to a hose now, or will once its part turns. */
function dangerWords(layout: Layout, frame: BayFrame, { zone, hazard }: HoseDanger): string {
  return word(isLive(layout, frame, zone, hazard) ? LIVE[hazard] : STANDING[hazard]);
}

const LIVE: Readonly<Record<Hazard, WordId & `bay.danger.${Hazard}`>> = {
  fan: 'bay.danger.fan',
  belt: 'bay.danger.belt',
  heat: 'bay.danger.heat',
};
const STANDING: Readonly<Record<Hazard, WordId & `bay.danger.${'fanStill' | 'beltStill' | 'heat'}`>> = {
  fan: 'bay.danger.fanStill',
  belt: 'bay.danger.beltStill',
  heat: 'bay.danger.heat',
};

function isLive(layout: Layout, frame: BayFrame, zoneId: string, hazard: Hazard): boolean {
  if (hazard === 'belt') return frame.engineRpm > 0;
  const part = layout.zones.find(({ id }) => id === zoneId)?.part;
  return hazard === 'fan' && part !== undefined && (frame.fansTurning[part] ?? false);
}

export function handHint(
  layout: Layout,
  frame: BayFrame,
  hand: Hand,
  ready: Ready | null,
  dangers: readonly HoseDanger[],
  byFinger = false,
): string {
  if (hand.doing === 'pressing' && hand.tugged && hand.under) {
    const hose = hoseOfCoupler(hand.under.id);
    if (hose) return word('bay.hint.holds', { item: couplerName(hose) });
    return word(frame.can?.valveSixteenths ? 'bay.hint.jointOpen' : 'bay.hint.jointHolds');
  }
  if (hand.doing === 'carrying') {
    const live = dangers.find(({ zone, hazard }) => isLive(layout, frame, zone, hazard));
    const danger = live ?? dangers[0];
    return danger ? dangerWords(layout, frame, danger) : thingHint(layout, frame, hand, byFinger);
  }
  const hose = ready && hoseOfCoupler(ready.item);
  const places = ready && placesOf(layout, frame, ready.valid);
  return hose && places ? word('bay.hint.ready', { item: couplerName(hose), places }) : '';
}

type Carrying = Extract<Hand, { readonly doing: 'carrying' }>;

/** `byFinger`: there are no keys to speak of and little room, and the thing is seen under the finger. */
function thingHint(
  layout: Layout,
  frame: BayFrame,
  { item, from, valid }: Carrying,
  byFinger: boolean,
): string {
  const hose = hoseOfCoupler(item);
  if (from === CAN) return word('bay.hint.endOff');
  if (item === CAN && valid.some((id) => inletOfEnd(id) !== null)) return word('bay.hint.canJoins');
  if (inletOfEnd(item)) return word(valid.includes(CAN) ? 'bay.hint.end' : 'bay.hint.endNowhere');
  if (!hose) return item === CAN && valid.includes(SCALE) ? word('bay.hint.can') : '';
  const places = placesOf(layout, frame, valid);
  if (byFinger) return places === '' ? word('bay.hint.fingerNowhere') : word('bay.hint.finger', { places });
  return places === ''
    ? word('bay.hint.nowhere', { item: couplerName(hose) })
    : word('bay.hint.goes', { item: couplerName(hose), places });
}

function placesOf(layout: Layout, frame: BayFrame, valid: readonly string[]): string {
  return layout.ports
    .filter(({ id }) => valid.includes(id))
    .map((port) => portByPlace(layout, port, frame.ports[port.id]?.bore))
    .join('; ');
}
