/**
 * The fans' common feed has a burnt contact, in the relay or at the main fan's plug: they turn, at a share of their speed,
 * down to a third. An eye that sees them turn passes it by. Signs: common trade expectation, no source. Range [guess].
 */
import type { Fault } from './fault';

const MOST_LOST = 0.67;

export const condenserFanSlow: Fault = {
  id: 'condenser-fan-slow',
  applies: ({ condenserAir }) => condenserAir.fans.length > 0,
  quantity: { name: 'fanSpeedShare', unit: '1', at: (severity) => 1 - MOST_LOST * severity },
  parameters: (severity) => ({
    fanHealth0: 1 - MOST_LOST * severity,
    fanHealth1: 1 - MOST_LOST * severity,
    fanHealth2: 1 - MOST_LOST * severity,
  }),
  clearedBy: ['fan', 'fan-relay'],
  excludes: ['condenser-fan-dead'],
  signs: {
    severity: 1,
    'orifice-tube': { low: 'up', high: 'up', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'up', vent: 'up' },
  },
};
