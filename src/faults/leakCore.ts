/**
 * The core of a service port does not seat: dirt or a torn seal, 50 g a year at a severity of 0.05 and 20 kg at 1, which
 * hisses. Its cap is the port's main seal: with the cap on, or a coupler, nothing leaves (a workshop's year-old car held
 * its charge on caps alone, both cores leaking). A car without a bench counts as one without caps. Range [guess].
 */
import type { Fault } from './fault';
import { holeAt } from './holeAt';
import { seepArea, seepRate } from './seep';

const WORST_KG_PER_YEAR = 20;
const rateAt = (severity: number): number => seepRate(WORST_KG_PER_YEAR, severity);

export const leakCore: Fault = {
  id: 'leak-core',
  applies: () => true,
  quantity: { name: 'seepRate', unit: 'kg/s', at: rateAt },
  links: (severity, site) => holeAt(site, seepArea(rateAt(severity))),
  usualSite: 'port-a',
  canBeAt: ({ kind }) => kind === 'port',
  toldBy: 'search',
  clearedBy: ['port-a', 'port-b'],
  excludes: [],
  signs: { severity: 0.3, 'orifice-tube': {}, 'expansion-valve': {} },
};
