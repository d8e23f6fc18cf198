/**
 * The low-pressure switch is the wrong one, or worn: both set points stand too high, by up to 700 kPa [guess]. A switch on
 * the low side first cycles the clutch fast, as with too little refrigerant; one on the high side shows nothing until it
 * stays open. In the end neither lets the clutch in. So cycling rises and falls again with severity; the rest moves one
 * way. Set too low it is another fault: the coil ices. Signs: common trade expectation, no source.
 */
import type { Fault } from './fault';

const MOST_HIGH_PA = 7e5;

export const lowSwitchWrong: Fault = {
  id: 'low-switch-wrong',
  applies: () => true,
  quantity: { name: 'switchTooHigh', unit: 'Pa', at: (severity) => MOST_HIGH_PA * severity },
  parameters: (severity) => ({ lowSwitchShiftPa: MOST_HIGH_PA * severity }),
  clearedBy: ['cycling-switch', 'hp-switch'],
  excludes: ['coil-iced'],
  signs: {
    severity: 1,
    'orifice-tube': { low: 'up', high: 'down', vent: 'up' },
    'expansion-valve': { low: 'up', high: 'down', vent: 'up' },
  },
};
