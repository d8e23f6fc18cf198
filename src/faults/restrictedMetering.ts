/**
 * Dirt on the inlet screen of the orifice tube or expansion valve: a share of its open area is gone, down to a twentieth.
 * A mild one on an orifice tube may raise or lower the high side, so it is not to be scored. Nor does its subcooling move one
 * way: liquid backs up first; nearly shut, the clutch hardly runs and the condenser empties.
 */
import type { Fault } from './fault';

const MOST_BLOCKED = 0.95;

export const restrictedMetering: Fault = {
  id: 'restricted-orifice',
  applies: () => true,
  quantity: { name: 'openAreaShare', unit: '1', at: (severity) => 1 - MOST_BLOCKED * severity },
  parameters: (severity) => ({ meteringHealth: 1 - MOST_BLOCKED * severity }),
  clearedBy: ['orifice', 'txv'],
  excludes: [],
  signs: {
    severity: 0.7,
    'orifice-tube': {
      low: 'down',
      high: 'either',
      vent: 'up',
      superheat: 'up',
      subcooling: 'up',
      cycling: 'either',
    },
    'expansion-valve': { low: 'down', high: 'down', vent: 'up', superheat: 'up', subcooling: 'same' },
  },
};
