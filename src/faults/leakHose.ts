/**
 * A hose that seeps through its wall or at its crimp: 20 g a year at a severity of 0.08, three kilograms at 1. The suction
 * line's where nobody says; the discharge line's leaks harder, since it is hot and holds the high side. Range [guess].
 */
import type { Fault } from './fault';
import { holeAt } from './holeAt';
import { seepArea, seepRate } from './seep';

const WORST_KG_PER_YEAR = 3;
const rateAt = (severity: number): number => seepRate(WORST_KG_PER_YEAR, severity);

export const leakHose: Fault = {
  id: 'leak-hose',
  applies: () => true,
  quantity: { name: 'seepRate', unit: 'kg/s', at: rateAt },
  links: (severity, site) => holeAt(site, seepArea(rateAt(severity))),
  usualSite: 'suction',
  canBeAt: ({ kind }) => kind === 'line',
  toldBy: 'search',
  clearedBy: ['suction', 'discharge'],
  excludes: [],
  signs: { severity: 0.3, 'orifice-tube': {}, 'expansion-valve': {} },
};
