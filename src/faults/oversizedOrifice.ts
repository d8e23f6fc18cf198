/**
 * The wrong orifice tube, or one washed out: its area over the right one's, up to 3.2 times. The worst of the sizes
 * sold for one seat is about 2.3 times the smallest (bores 1.22 to 1.83 mm, common practice), at 0.6; what wear adds is
 * [guess].
 * Signs: service text on orifice tubes.
 */
import type { Fault } from './fault';

const MOST_OVER = 2.2;

export const oversizedOrifice: Fault = {
  id: 'oversized-orifice',
  applies: ({ metering }) => metering.kind === 'orifice-tube',
  needs: 'orifice-tube',
  quantity: { name: 'areaOverOwn', unit: '1', at: (severity) => 1 + MOST_OVER * severity },
  parameters: (severity) => ({ meteringArea: 1 + MOST_OVER * severity }),
  clearedBy: ['orifice'],
  excludes: ['restricted-orifice', 'missing-orifice'],
  signs: {
    severity: 0.6,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up', superheat: 'either', subcooling: 'down' },
    'expansion-valve': {},
  },
};
