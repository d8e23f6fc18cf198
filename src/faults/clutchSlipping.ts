/**
 * Worn or oily clutch faces: the quantity is the share of its torque that the clutch still passes, down to a twentieth. Half
 * of it lost shows nothing, so most of it goes early with severity [guess]; past the torque of the day the hub falls behind
 * its pulley, needles hunt, faces and compressor grow hot. Signs: common trade expectation.
 * On a mild day superheat does not move one way: a slow pump floods the coil, one that hardly turns does nothing.
 */
import { hasClutch } from '../loop/car/coolingAsked';
import type { Fault } from './fault';

const MOST_LOST = 0.95;

const torqueShare = (severity: number): number => 1 - MOST_LOST * severity * (2 - severity);

export const clutchSlipping: Fault = {
  id: 'clutch-slipping',
  applies: hasClutch,
  needs: 'clutch',
  quantity: { name: 'clutchTorqueShare', unit: '1', at: torqueShare },
  parameters: (severity) => ({ clutchHealth: torqueShare(severity) }),
  clearedBy: ['compressor', 'clutch'],
  excludes: ['clutch-not-engaging', 'clutch-stuck-on'],
  signs: {
    severity: 0.8,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up', cycling: 'either', subcooling: 'either' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up', cycling: 'either', subcooling: 'either' },
  },
};
