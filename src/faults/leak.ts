/**
 * A hole, from a pinhole to 0.5 mm, at any part of the loop. What leaves is what stands there: liquid from the liquid
 * line, vapour from the suction line. Under vacuum it lets air in. Discharge coefficient 0.7 of a sharp edge [guess].
 */
import { ROOM } from '../loop/networkTypes';
import type { Fault } from './fault';

const MOST_DIAMETER_M = 0.5e-3;
const DISCHARGE_COEFFICIENT = 0.7;
const QUARTER_PI = 0.7853981633974483;

const diameterAt = (severity: number): number => MOST_DIAMETER_M * severity;

export const leak: Fault = {
  id: 'leak',
  applies: () => true,
  quantity: { name: 'holeDiameter', unit: 'm', at: diameterAt },
  links(severity, site) {
    const diameter = diameterAt(severity);
    if (diameter <= 0) return [];
    return [
      {
        kind: 'valve',
        id: `leak:${site.part}`,
        from: { vessel: site.vessel, cell: site.firstCell + site.cells - 1, height: 'bulk' },
        to: { vessel: ROOM, cell: 0, height: 'bulk' },
        areaM2: DISCHARGE_COEFFICIENT * QUARTER_PI * diameter * diameter,
        opening: 1,
      },
    ];
  },
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
