/**
 * The fans' relay gets its signal late: they come on only when the high side is that much over where it should be, up to
 * 1.2 MPa [guess], so that the head saws up and down standing still. From a quarter of that on, a fan that should run with
 * the clutch stands under 1.3 MPa and that much more; with less delay it comes on lower, with none it always runs. Signs:
 * common trade expectation, no source.
 */
import type { Fault } from './fault';

const MOST_LATE_PA = 1.2e6;

export const condenserFanLate: Fault = {
  id: 'condenser-fan-late',
  applies: ({ condenserAir }) => condenserAir.fans.length > 0,
  needs: 'electric-fan',
  quantity: { name: 'fanLate', unit: 'Pa', at: (severity) => MOST_LATE_PA * severity },
  parameters: (severity) => ({ fanLatePa: MOST_LATE_PA * severity }),
  clearedBy: ['fan-relay'],
  excludes: ['condenser-fan-dead'],
  signs: {
    severity: 0.9,
    'orifice-tube': { high: 'up', low: 'either', vent: 'either' },
    'expansion-valve': { high: 'up', low: 'either', vent: 'either' },
  },
};
