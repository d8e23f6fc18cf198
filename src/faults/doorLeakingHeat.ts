/**
 * The temperature door does not shut: a share of the vents' air, up to half [guess], comes past the hot heater core. Gauges
 * and the air right behind the coil are as they should be, the vents are warm once the engine is. The cabin warms a little,
 * which may raise the low side. Signs: common practice, no source.
 */
import type { Fault } from './fault';

const MOST_PAST = 0.5;

export const doorLeakingHeat: Fault = {
  id: 'door-leaking-heat',
  applies: () => true,
  quantity: { name: 'airPastHeater', unit: '1', at: (severity) => MOST_PAST * severity },
  parameters: (severity) => ({ doorLeak: MOST_PAST * severity }),
  clearedBy: ['blend-door'],
  excludes: [],
  signs: {
    severity: 0.6,
    'orifice-tube': { low: 'either', high: 'either', vent: 'up', superheat: 'same', subcooling: 'same' },
    'expansion-valve': { low: 'either', high: 'either', vent: 'up', superheat: 'same', subcooling: 'same' },
  },
};
