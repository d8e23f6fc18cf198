/**
 * The receiver-drier is clogged at its outlet: share of its area that is open. Everything behind it is as cold as what
 * boils there; that step is the sure sign. Signs: a textbook of air-conditioning service (outlet blocked: high side down);
 * the step of more than 3 K, common practice. Readings go one way with severity but subcooling, cycling and discharge
 * temperature.
 */
import { hasDrier } from '../loop/car/meterEdits';
import type { Fault } from './fault';
import { lineShare } from './lineShare';

export const drierRestricted: Fault = {
  id: 'drier-restricted',
  applies: hasDrier,
  needs: 'drier',
  quantity: { name: 'lineShare', unit: '1', at: lineShare },
  parameters: (severity) => ({ drierHealth: lineShare(severity) }),
  clearedBy: ['drier'],
  excludes: [],
  signs: {
    severity: 0.6,
    'orifice-tube': {},
    'expansion-valve': { low: 'down', high: 'down', vent: 'up', superheat: 'up', subcooling: 'either' },
  },
};
