/**
 * What keeps the coil from freezing lets go too late: the fin thermostat, or the switch on the low side of a car without
 * one, by up to 9 K on the coil [guess], most of it early. A switch feels that as 8.6 kPa a kelvin (R-134a between -10 and
 * -5 degC, saturation tables). On a hot day with a wet coil nothing is to be seen; on a mild one frost grows until no air
 * passes, and thaws on stopping. A sound car cycles then, so the high side stands higher until little air is left. Signs:
 * service text on evaporators.
 */
import type { Fault } from './fault';

const MOST_LATE_K = 9;
const PA_PER_K = 8600;

const lateK = (severity: number): number => MOST_LATE_K * severity * (2 - severity);

export const coilIced: Fault = {
  id: 'coil-iced',
  applies: ({ switches }) => switches.fin !== undefined || switches.low.at === 'low',
  needs: 'coil-switch',
  quantity: { name: 'coilColder', unit: 'K', at: lateK },
  parameters: (severity, { switches }) =>
    switches.fin ? { finSwitchShiftK: -lateK(severity) } : { lowSwitchShiftPa: -PA_PER_K * lateK(severity) },
  clearedBy: ['thermostat', 'cycling-switch'],
  excludes: ['low-switch-wrong'],
  // none at 32 degC with the windows open: the load keeps the coil from freezing
  signs: { severity: 1, 'orifice-tube': {}, 'expansion-valve': {} },
};
