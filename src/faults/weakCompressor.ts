/**
 * Worn valves or rings: the compressor pumps a share of what it should, down to three tenths. Low side high, high side
 * low. Signs: vehicle service text. Sources differ on subcooling.
 */
import type { Fault } from './fault';

const MOST_LOST = 0.7;

export const weakCompressor: Fault = {
  id: 'weak-compressor',
  applies: () => true,
  quantity: { name: 'pumpingShare', unit: '1', at: (severity) => 1 - MOST_LOST * severity },
  parameters: (severity) => ({ pumpingHealth: 1 - MOST_LOST * severity }),
  clearedBy: ['compressor'],
  excludes: [],
  signs: {
    severity: 0.7,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up', subcooling: 'either' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up', subcooling: 'either' },
  },
};
