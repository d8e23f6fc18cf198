/**
 * The bulb has lost some of what is sealed in it: a share of its pressure is gone, at worst all of it, and the valve shuts.
 * Only a valve with a bulb on a tube can lose it this way. Readings go one way with severity but subcooling, cycling and
 * discharge temperature, which rise and fall again as hardly anything flows. Signs: a valve maker's service text.
 */
import type { Fault } from './fault';
import { hasRemoteBulb } from './hasRemoteBulb';

export const bulbChargeLost: Fault = {
  id: 'bulb-charge-lost',
  applies: hasRemoteBulb,
  needs: 'bulb',
  quantity: { name: 'bulbPressureShare', unit: '1', at: (severity) => 1 - severity },
  parameters: (severity) => ({ bulbCharge: 1 - severity }),
  clearedBy: ['txv'],
  excludes: [],
  signs: {
    severity: 0.6,
    'orifice-tube': {},
    'expansion-valve': { low: 'down', high: 'down', vent: 'up', superheat: 'up', subcooling: 'either' },
  },
};
