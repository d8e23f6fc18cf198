/**
 * Worn or oily clutch faces: the quantity is the share of its torque that the clutch still passes, down to a tenth. A
 * little lost shows nothing; past the torque of the day the hub falls behind its pulley, needles hunt, faces and compressor
 * grow hot. Signs: common trade expectation. Range [guess].
 */
import { hasClutch } from '../loop/car/coolingAsked';
import type { Fault } from './fault';

const MOST_LOST = 0.9;

export const clutchSlipping: Fault = {
  id: 'clutch-slipping',
  applies: hasClutch,
  quantity: { name: 'clutchTorqueShare', unit: '1', at: (severity) => 1 - MOST_LOST * severity },
  parameters: (severity) => ({ clutchHealth: 1 - MOST_LOST * severity }),
  clearedBy: ['compressor', 'clutch'],
  excludes: ['clutch-stuck-on'],
  signs: {
    severity: 0.8,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up', cycling: 'either', subcooling: 'either' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up', cycling: 'either', subcooling: 'either' },
  },
};
