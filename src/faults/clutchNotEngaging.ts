/**
 * The compressor's clutch gets no current or does not hold: under half its pull it stays out. Both sides then stand at
 * the pressure of a resting loop. Signs: common trade expectation.
 */
import type { Fault } from './fault';

export const clutchNotEngaging: Fault = {
  id: 'clutch-not-engaging',
  applies: () => true,
  quantity: { name: 'clutchPullShare', unit: '1', at: (severity) => 1 - severity },
  parameters: (severity) => ({ clutchHealth: 1 - severity }),
  clearedBy: ['compressor', 'clutch'],
  excludes: ['weak-compressor'],
  signs: {
    severity: 1,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up' },
  },
};
