/**
 * Dust and leaves sit on the coil itself: a share of its air is gone, down to a seventh [guess], and what is under the dirt
 * cools less. What comes out is colder, but little. Once the clutch cycles, means of the low side and of the vent rise
 * again a little. Signs: vehicle service text; the vent is not scored.
 */
import type { Fault } from './fault';

const MOST_BLOCKED = 0.85;

export const coilAirLow: Fault = {
  id: 'coil-air-low',
  applies: () => true,
  quantity: { name: 'coilAirShare', unit: '1', at: (severity) => 1 - MOST_BLOCKED * severity },
  parameters: (severity) => ({ coilAirHealth: 1 - MOST_BLOCKED * severity }),
  clearedBy: ['evaporator'],
  cleanedAt: ['evaporator'],
  excludes: [],
  signs: {
    severity: 0.7,
    'orifice-tube': { low: 'down', high: 'down', vent: 'either', superheat: 'either' },
    'expansion-valve': { low: 'either', high: 'down', vent: 'either' },
  },
};
