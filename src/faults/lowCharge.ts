/**
 * Too little refrigerant in a loop that is tight now: down to a fifth of the label's amount, under which the low-pressure
 * switch hardly lets a clutch in. Signs: vehicle service text; "mild" is no sign at all, as a trade body measured (2021).
 */
import type { Fault } from './fault';

const MOST_MISSING = 0.8;

export const lowCharge: Fault = {
  id: 'low-charge',
  applies: () => true,
  quantity: { name: 'chargeShare', unit: '1', at: (severity) => 1 - MOST_MISSING * severity },
  contents: (filling, severity) => ({
    ...filling,
    chargeKg: filling.chargeKg * (1 - MOST_MISSING * severity),
  }),
  clearedBy: [],
  excludes: ['overcharge'],
  signs: {
    severity: 0.75,
    'orifice-tube': {
      low: 'down',
      high: 'down',
      vent: 'up',
      superheat: 'up',
      subcooling: 'down',
      cycling: 'up',
    },
    'expansion-valve': { low: 'down', high: 'down', vent: 'up', superheat: 'up', subcooling: 'same' },
  },
};
