/**
 * Leaves, mud or bent fins in front of the condenser: a share of its air is gone, driving or standing, down to a fifth.
 * Signs: vehicle service text ("dirty condenser").
 * On a mild day a car with a thermostat runs longer at first, and the mean of its vent is colder before it warms.
 */
import type { Fault } from './fault';

const MOST_BLOCKED = 0.8;

export const condenserAirBlocked: Fault = {
  id: 'condenser-air-blocked',
  applies: () => true,
  quantity: { name: 'airFlowShare', unit: '1', at: (severity) => 1 - MOST_BLOCKED * severity },
  parameters: (severity) => ({ condenserAirHealth: 1 - MOST_BLOCKED * severity }),
  clearedBy: ['condenser'],
  cleanedAt: ['condenser'],
  excludes: [],
  signs: {
    severity: 0.6,
    'orifice-tube': { low: 'up', high: 'up', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'up', vent: 'up' },
  },
};
