/**
 * A hole, from a pinhole to 0.5 mm, at any place of the loop. What leaves is what stands there: liquid from the liquid
 * line, vapour from the suction line.
 */
import type { Fault } from './fault';
import { holeAt } from './holeAt';
import { pinhole } from './pinhole';

const MOST_DIAMETER_M = 0.5e-3;

const diameterAt = (severity: number): number => MOST_DIAMETER_M * severity;

export const leak: Fault = {
  id: 'leak',
  applies: () => true,
  quantity: { name: 'holeDiameter', unit: 'm', at: diameterAt },
  links: (severity, site) => holeAt(site, pinhole(diameterAt(severity))),
  usualSite: 'condenser',
  clearedBy: [
    'condenser',
    'drier',
    'accumulator',
    'liquid',
    'suction',
    'discharge',
    'evaporator',
    'compressor',
  ],
  excludes: [],
  // signs come with what has gone: a slow leak shows none for a while
  signs: { severity: 0.1, 'orifice-tube': {}, 'expansion-valve': {} },
};
