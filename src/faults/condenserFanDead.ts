/**
 * The electric condenser fan turns slowly or not at all; with two, both hang on the one relay. Fine on the road, too hot
 * standing still. Signs: common trade expectation, and vehicle service text on high-pressure trips at idle.
 */
import type { Fault } from './fault';

export const condenserFanDead: Fault = {
  id: 'condenser-fan-dead',
  applies: ({ condenserAir }) => condenserAir.fans.length > 0,
  needs: 'electric-fan',
  quantity: { name: 'fanFlowShare', unit: '1', at: (severity) => 1 - severity },
  parameters: (severity) => ({
    fanHealth0: 1 - severity,
    fanHealth1: 1 - severity,
    fanHealth2: 1 - severity,
  }),
  clearedBy: ['fan', 'fan2'],
  excludes: [],
  signs: {
    severity: 1,
    'orifice-tube': { low: 'up', high: 'up', vent: 'up', cycling: 'up' },
    'expansion-valve': { low: 'up', high: 'up', vent: 'up', cycling: 'up' },
  },
};
