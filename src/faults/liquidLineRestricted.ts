/**
 * The liquid line is pinched or clogged at its end, before the metering device: share of its area that is open. Behind
 * the place the line is as cold as what boils there; that step is the sure sign. Signs: a textbook of air-conditioning
 * service; the step of more than 3 K, common practice. Readings go one way with severity but subcooling, cycling, discharge
 * temperature and, on an orifice car, high side and vent: liquid backs up first, then nothing is left to pump.
 */
import type { Fault } from './fault';
import { lineShare } from './lineShare';

export const liquidLineRestricted: Fault = {
  id: 'liquid-line-restricted',
  applies: () => true,
  quantity: { name: 'lineShare', unit: '1', at: lineShare },
  parameters: (severity) => ({ liquidLineHealth: lineShare(severity) }),
  clearedBy: ['liquid'],
  excludes: [],
  signs: {
    severity: 0.6,
    'orifice-tube': { low: 'down', high: 'either', vent: 'up', superheat: 'up', subcooling: 'up' },
    'expansion-valve': { low: 'down', high: 'down', vent: 'up', superheat: 'up', subcooling: 'either' },
  },
};
