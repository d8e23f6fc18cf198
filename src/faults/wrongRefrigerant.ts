/**
 * Another refrigerant altogether in the loop, whatever the label says. It was filled by the gauge and not by weight:
 * severity is what is missing of the label's weight, down to half [guess]: a fifth less still cools about as well. Any severity over 0 is the wrong gas.
 */
import { eitherWay } from './eitherWay';
import type { Fault } from './fault';
import { otherRefrigerant } from './otherRefrigerant';

const MOST_MISSING = 0.5;

export const wrongRefrigerant: Fault = {
  id: 'wrong-refrigerant',
  applies: () => true,
  quantity: { name: 'wrongChargeShare', unit: '1', at: (severity) => 1 - MOST_MISSING * severity },
  contents: (filling, severity) =>
    severity > 0
      ? {
          ...filling,
          refrigerant: otherRefrigerant(filling.refrigerant),
          chargeKg: filling.chargeKg * (1 - MOST_MISSING * severity),
        }
      : filling,
  clearedBy: [],
  excludes: ['mixed-refrigerant', 'low-charge', 'overcharge'],
  signs: eitherWay(0.5),
};
