/**
 * The fans' common feed has a burnt contact, in the relay or at the main fan's plug: they turn, at a share of their speed,
 * down to a seventh, most of it early. An eye that sees them turn passes it by. Signs: common trade expectation, no
 * source. Range [guess].
 */
import type { Fault } from './fault';

const MOST_LOST = 0.85;

const lost = (severity: number): number => MOST_LOST * severity * (2 - severity);

export const condenserFanSlow: Fault = {
  id: 'condenser-fan-slow',
  applies: ({ condenserAir }) => condenserAir.fans.length > 0,
  needs: 'electric-fan',
  quantity: { name: 'fanSpeedShare', unit: '1', at: (severity) => 1 - lost(severity) },
  parameters: (severity) => ({
    fanHealth0: 1 - lost(severity),
    fanHealth1: 1 - lost(severity),
    fanHealth2: 1 - lost(severity),
  }),
  clearedBy: ['fan', 'fan-relay'],
  excludes: ['condenser-fan-dead'],
  signs: {
    severity: 1,
    'orifice-tube': { low: 'up', high: 'up', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'up', vent: 'up' },
  },
};
