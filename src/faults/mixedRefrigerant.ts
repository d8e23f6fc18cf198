/**
 * A second refrigerant mixed with the loop's own, up to two fifths of the charge: topped up with what was at hand, old
 * stock or, where a scenario says so, a hydrocarbon sold for refilling. Static pressure does not tell it (the lines of
 * R-134a and R-12 cross at 17 °C): only an identifier does. Cars differ in every sign.
 */
import { eitherWay } from './eitherWay';
import type { Fault } from './fault';
import { otherRefrigerant } from './otherRefrigerant';

const MOST_SHARE = 0.4;

export const mixedRefrigerant: Fault = {
  id: 'mixed-refrigerant',
  applies: () => true,
  quantity: { name: 'foreignShare', unit: '1', at: (severity) => MOST_SHARE * severity },
  contents: (filling, severity, _vehicle, gas) =>
    severity > 0
      ? {
          ...filling,
          foreign: { fluid: gas ?? otherRefrigerant(filling.refrigerant), share: MOST_SHARE * severity },
        }
      : filling,
  takesGas: true,
  clearedBy: [],
  excludes: ['wrong-refrigerant'],
  signs: eitherWay(0.7),
};
