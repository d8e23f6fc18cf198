/**
 * Too little oil, down to a tenth of what belongs in the loop: lost with a leak, or left in parts that were taken out. No
 * gauge tells it; the compressor does, hot at first, then noisy. What it takes is [guess].
 */
import type { Fault } from './fault';

const MOST_MISSING = 0.9;

export const tooLittleOil: Fault = {
  id: 'too-little-oil',
  applies: () => true,
  quantity: { name: 'oilShare', unit: '1', at: (severity) => 1 - MOST_MISSING * severity },
  contents: (filling, severity, { compressor }) =>
    severity > 0
      ? { ...filling, extraOilKg: filling.extraOilKg - MOST_MISSING * severity * compressor.oil }
      : filling,
  clearedBy: [],
  excludes: ['too-much-oil'],
  // nothing, until the compressor suffers
  signs: { severity: 0.7, 'orifice-tube': {}, 'expansion-valve': {} },
};
