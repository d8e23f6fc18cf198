/**
 * No current at the compressor's clutch, or too little: the quantity is the share of the voltage that reaches its coil.
 * Under six tenths the plate does not pull in, under three tenths it does not hold (common practice, no source). Then both
 * sides stand at the pressure of a resting loop. A clutch that pulls in and cannot pass the torque is another fault:
 * slipping. Signs: common trade expectation.
 */
import { hasClutch } from '../loop/car/coolingAsked';
import type { Fault } from './fault';

export const clutchNotEngaging: Fault = {
  id: 'clutch-not-engaging',
  applies: hasClutch,
  needs: 'clutch',
  quantity: { name: 'clutchVoltageShare', unit: '1', at: (severity) => 1 - severity },
  parameters: (severity) => ({ clutchCurrent: 1 - severity }),
  clearedBy: ['compressor', 'clutch'],
  excludes: ['weak-compressor', 'leaking-reed', 'clutch-slipping', 'clutch-stuck-on'],
  signs: {
    severity: 1,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up' },
  },
};
