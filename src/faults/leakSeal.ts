/**
 * The compressor's shaft seal weeps: at a severity of 0.1 the 20 g a year of a sound one, at 1 two kilograms, which empties
 * a car in a season. It feels the low side, running or not. Found under the clutch. Range [guess] over the usual rates.
 */
import type { Fault } from './fault';
import { holeAt } from './holeAt';
import { seepArea, seepRate } from './seep';

const WORST_KG_PER_YEAR = 2;
const rateAt = (severity: number): number => seepRate(WORST_KG_PER_YEAR, severity);

export const leakSeal: Fault = {
  id: 'leak-seal',
  applies: () => true,
  quantity: { name: 'seepRate', unit: 'kg/s', at: rateAt },
  links: (severity, site) => holeAt(site, seepArea(rateAt(severity))),
  usualSite: 'compressor',
  canBeAt: ({ id }) => id === 'compressor',
  toldBy: 'search',
  clearedBy: ['compressor'],
  excludes: [],
  signs: { severity: 0.3, 'orifice-tube': {}, 'expansion-valve': {} },
};
