/**
 * A stone's hole or a rubbed tube in the condenser: up to half a millimetre, which empties the car in an hour; at a
 * severity of 0.1 a pore of 5 micrometres and about a kilogram a year. What leaves is what stands there. Range [guess].
 */
import type { Fault } from './fault';
import { holeAt } from './holeAt';
import { pinhole } from './pinhole';

const MOST_DIAMETER_M = 0.5e-3;
const diameterAt = (severity: number): number => MOST_DIAMETER_M * severity * severity;

export const leakCondenser: Fault = {
  id: 'leak-condenser',
  applies: () => true,
  quantity: { name: 'holeDiameter', unit: 'm', at: diameterAt },
  links: (severity, site) => holeAt(site, pinhole(diameterAt(severity))),
  usualSite: 'condenser',
  canBeAt: ({ id }) => id === 'condenser',
  toldBy: 'search',
  clearedBy: ['condenser'],
  excludes: [],
  signs: { severity: 0.1, 'orifice-tube': {}, 'expansion-valve': {} },
};
