/**
 * The compressor's clutch slips, or gets no current: the compressor turns at a share of its speed, down to none. Then both
 * sides stand at the pressure of a resting loop. The heat of slipping is left out. Signs: common trade expectation.
 */
import type { Fault } from './fault';

export const clutchNotEngaging: Fault = {
  id: 'clutch-not-engaging',
  applies: () => true,
  quantity: { name: 'clutchSpeedShare', unit: '1', at: (severity) => 1 - severity },
  parameters: (severity) => ({ clutchHealth: 1 - severity }),
  clearedBy: ['compressor', 'clutch'],
  excludes: ['weak-compressor'],
  signs: {
    severity: 1,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up' },
  },
};
