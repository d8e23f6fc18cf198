/**
 * The cabin's blower turns slowly or not at all, with its switch where it was: cooling is still asked for, but hardly any
 * air passes the coil. Once the clutch cycles, means of the low side and of the vent rise again a little. Signs: common
 * practice, no source.
 */
import type { Fault } from './fault';

export const blowerDead: Fault = {
  id: 'blower-dead',
  applies: () => true,
  quantity: { name: 'blowerAirShare', unit: '1', at: (severity) => 1 - severity },
  parameters: (severity) => ({ blowerHealth: 1 - severity }),
  clearedBy: ['blower'],
  excludes: [],
  signs: {
    severity: 0.7,
    'orifice-tube': { low: 'down', high: 'down', vent: 'either', superheat: 'either' },
    'expansion-valve': { low: 'either', high: 'down', vent: 'either' },
  },
};
