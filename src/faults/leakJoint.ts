/**
 * A hardened or pinched o-ring at a joint: 3 g a year, a sound one's, at a severity of 0.05, a kilogram at 1. A new seal
 * mends it, and so does a new line or part, which comes with its own. Range [guess] over the usual rates.
 */
import type { Fault } from './fault';
import { holeAt } from './holeAt';
import { seepArea, seepRate } from './seep';

const WORST_KG_PER_YEAR = 1;
const rateAt = (severity: number): number => seepRate(WORST_KG_PER_YEAR, severity);

export const leakJoint: Fault = {
  id: 'leak-joint',
  applies: () => true,
  quantity: { name: 'seepRate', unit: 'kg/s', at: rateAt },
  links: (severity, site) => holeAt(site, seepArea(rateAt(severity))),
  usualSite: 'discharge-condenser',
  canBeAt: ({ kind }) => kind === 'joint',
  toldBy: 'search',
  clearedBy: ['discharge', 'condenser'],
  excludes: [],
  signs: { severity: 0.4, 'orifice-tube': {}, 'expansion-valve': {} },
};
