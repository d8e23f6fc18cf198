/**
 * The cabin filter has never been changed: a share of the blower's air is gone, down to a tenth [guess], and a severe one
 * lets the coil freeze on a mild day. Once the clutch cycles, means of the low side and of the vent rise again a little.
 * Signs: vehicle service text; common practice.
 */
import type { Fault } from './fault';

const MOST_BLOCKED = 0.9;

export const cabinFilterBlocked: Fault = {
  id: 'cabin-filter-blocked',
  applies: () => true,
  quantity: { name: 'filterAirShare', unit: '1', at: (severity) => 1 - MOST_BLOCKED * severity },
  parameters: (severity) => ({ filterHealth: 1 - MOST_BLOCKED * severity }),
  clearedBy: ['cabin-filter'],
  excludes: [],
  signs: {
    severity: 0.7,
    'orifice-tube': { low: 'down', high: 'down', vent: 'either', superheat: 'either' },
    'expansion-valve': { low: 'either', high: 'down', vent: 'either' },
  },
};
