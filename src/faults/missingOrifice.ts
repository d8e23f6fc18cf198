/**
 * No orifice tube where it belongs, or one whose seal lets most go past: the open area over the tube's, up to the bare
 * seat of some 4.7 mm, eight times [guess]. Liquid line and coil inlet come to about one temperature. Signs: service text
 * on orifice tubes.
 */
import type { Fault } from './fault';

const MOST_OVER = 7;

export const missingOrifice: Fault = {
  id: 'missing-orifice',
  applies: ({ metering }) => metering.kind === 'orifice-tube',
  needs: 'orifice-tube',
  quantity: { name: 'areaOverOwn', unit: '1', at: (severity) => 1 + MOST_OVER * severity },
  parameters: (severity) => ({ meteringArea: 1 + MOST_OVER * severity }),
  clearedBy: ['orifice'],
  excludes: ['restricted-orifice', 'oversized-orifice'],
  signs: {
    severity: 0.6,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up', superheat: 'either', subcooling: 'down' },
    'expansion-valve': {},
  },
};
