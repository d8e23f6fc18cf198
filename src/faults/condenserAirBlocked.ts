/**
 * Leaves, mud or bent fins in front of the condenser: a share of its air is gone, driving or standing, down to a fifth.
 * Signs: vehicle service text ("dirty condenser"). Half of it gone hardly shows, so most goes early with severity: at 0.6
 * the head is in the band which that text prints for a dirty condenser.
 * On a mild day a car with a thermostat runs longer at first, and the mean of its vent is colder before it warms.
 */
import type { Fault } from './fault';

const MOST_BLOCKED = 0.8;

const airShare = (severity: number): number => 1 - MOST_BLOCKED * severity * (2 - severity);

export const condenserAirBlocked: Fault = {
  id: 'condenser-air-blocked',
  applies: () => true,
  quantity: { name: 'airFlowShare', unit: '1', at: airShare },
  parameters: (severity) => ({ condenserAirHealth: airShare(severity) }),
  clearedBy: ['condenser'],
  cleanedAt: ['condenser'],
  excludes: [],
  signs: {
    severity: 0.6,
    'orifice-tube': { low: 'up', high: 'up', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'up', vent: 'up' },
  },
};
