/**
 * Welded clutch faces: the quantity is the share of its torque that the clutch passes with no current. Over about a third
 * the compressor turns whenever the engine does, whatever the switches say: with the request off, on a frozen coil, against
 * a closed valve. Faces that are welded neither slip nor wait for a current. Signs show where a sound car would cycle; under
 * full load it would not let go anyway.
 */
import { hasClutch } from '../loop/car/coolingAsked';
import type { Fault } from './fault';

export const clutchStuckOn: Fault = {
  id: 'clutch-stuck-on',
  applies: hasClutch,
  needs: 'clutch',
  quantity: { name: 'clutchDragShare', unit: '1', at: (severity) => severity },
  parameters: (severity) => ({ clutchStuck: severity }),
  clearedBy: ['compressor', 'clutch'],
  excludes: ['clutch-not-engaging', 'clutch-slipping'],
  signs: { severity: 1, 'orifice-tube': { cycling: 'either' }, 'expansion-valve': { cycling: 'either' } },
};
