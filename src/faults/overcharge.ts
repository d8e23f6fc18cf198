/**
 * Too much refrigerant: up to one more 340 g can in a car that holds 480 g. Liquid backs up into the condenser (or over
 * the accumulator). Sources differ on superheat; an accumulator hides a good deal, half of the label's weight and more, so
 * most of it goes in early with severity [guess].
 */
import type { Fault } from './fault';

const MOST_OVER = 0.75;

const over = (severity: number): number => MOST_OVER * severity * (2 - severity);

export const overcharge: Fault = {
  id: 'overcharge',
  applies: () => true,
  quantity: { name: 'chargeShare', unit: '1', at: (severity) => 1 + over(severity) },
  contents: (filling, severity) => ({ ...filling, chargeKg: filling.chargeKg * (1 + over(severity)) }),
  clearedBy: [],
  excludes: ['low-charge'],
  signs: {
    severity: 0.7,
    'orifice-tube': { low: 'either', high: 'either', superheat: 'either' },
    'expansion-valve': { high: 'up', superheat: 'same', subcooling: 'up' },
  },
};
