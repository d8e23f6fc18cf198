/**
 * Corrosion has eaten through the evaporator: up to 0.2 mm. The coil hangs in its case, where no eye and no probe gets to:
 * the gas gathers there while the blower stands and comes out at the drain and the vents. Range [guess].
 */
import type { Fault } from './fault';
import { holeAt } from './holeAt';
import { pinhole } from './pinhole';

const MOST_DIAMETER_M = 0.2e-3;
const diameterAt = (severity: number): number => MOST_DIAMETER_M * severity * severity;

export const leakEvaporator: Fault = {
  id: 'leak-evaporator',
  applies: () => true,
  quantity: { name: 'holeDiameter', unit: 'm', at: diameterAt },
  links: (severity, site) => holeAt(site, pinhole(diameterAt(severity))),
  usualSite: 'evaporator',
  canBeAt: ({ id }) => id === 'evaporator',
  toldBy: 'search',
  clearedBy: ['evaporator'],
  excludes: [],
  signs: { severity: 0.1, 'orifice-tube': {}, 'expansion-valve': {} },
};
