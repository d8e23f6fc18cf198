/**
 * The bulb hangs loose on its line: it feels the bay's air too, and late, so the valve opens too far and hunts. Up to a
 * bulb that hangs free. High side and vent as with a valve open too far: not to be scored. Signs: a valve maker's service
 * text. Readings go one way with severity but the vent, and superheat swings most at a mild one.
 */
import type { Fault } from './fault';
import { hasRemoteBulb } from './hasRemoteBulb';

export const bulbLoose: Fault = {
  id: 'bulb-loose',
  applies: hasRemoteBulb,
  needs: 'bulb',
  quantity: { name: 'bulbLooseShare', unit: '1', at: (severity) => severity },
  parameters: (severity) => ({ bulbLoose: severity }),
  clearedBy: ['txv'],
  excludes: [],
  signs: {
    severity: 0.6,
    'orifice-tube': {},
    'expansion-valve': { low: 'up', high: 'either', vent: 'either', superheat: 'down', subcooling: 'either' },
  },
};
