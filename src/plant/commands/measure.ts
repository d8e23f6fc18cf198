/** Placing thermometers, zeroing gauges, and writing a reading on the job card. */
import type { GaugeId } from '../../equipment/instruments';
import type { Command } from '../commandSpecs';
import { done, type Rig, refuse } from '../rig';

const HOSE_OF: Readonly<Record<GaugeId, 'charging' | 'gauge-low' | 'gauge-high'>> = {
  charging: 'charging',
  low: 'gauge-low',
  high: 'gauge-high',
};

/** A gauge further than this from zero is not at rest: zeroing it would hide a pressure. */
const ZERO_REACH_PA = 60_000;

const UNIT_OF: Readonly<Record<string, string>> = {
  air: 'K',
  line: 'K',
  scale: 'kg',
  'micron-gauge': 'Pa abs',
  'recovery-scale': 'kg',
  'charging-scale': 'kg',
  'drained-oil': 'm3',
  'gas-r134a': 'share',
  'gas-r12': 'share',
  'gas-r1234yf': 'share',
  'gas-hydrocarbon': 'share',
  'gas-air': 'share',
  detector: '1',
  soap: '1',
  lamp: '1',
};

/** What weighs what goes into a car. */
const WEIGHING: readonly string[] = ['scale', 'charging-scale'];
const REFILLED_KG = 0.05;

export const measure = {
  zero(rig: Rig, command: Command) {
    const gauge = String(command.gauge) as GaugeId;
    const hose = rig.desk.hoses[HOSE_OF[gauge]];
    if (hose?.open) return refuse('gaugeOnCar');
    const reading = rig.reading(`${gauge}-gauge`);
    if (Math.abs(reading) > ZERO_REACH_PA) return refuse('gaugeHoldsPressure');
    rig.desk.trims[gauge] += reading;
    return done({ id: 'gauge-zeroed', subject: gauge, quantity: reading, unit: 'Pa' });
  },

  'probe-air'(rig: Rig, command: Command) {
    const at = String(command.at);
    if (rig.desk.probes.air === at) return refuse('already');
    rig.desk.probes.air = at;
    return done({ id: 'probe-placed', subject: at });
  },

  'probe-line'(rig: Rig, command: Command) {
    const at = String(command.at);
    if (rig.desk.probes.line === at) return refuse('already');
    rig.desk.probes.line = at;
    return done({ id: 'probe-placed', subject: at });
  },

  'note-reading'(rig: Rig, command: Command) {
    const channel = String(command.channel);
    const quantity = rig.reading(channel);
    if (Number.isNaN(quantity)) return refuse('nothingToRead');
    if (rig.isStopped(channel)) return refuse('beyondScale');
    if (WEIGHING.includes(channel)) rig.desk.tasks.weighed ||= isRefilled(rig);
    return done({ id: 'noted', subject: channel, quantity, unit: UNIT_OF[channel] ?? 'Pa' });
  },
};

/** Refrigerant in a loop that was empty before, more than would lie in a hose [guess]. */
const isRefilled = ({ network, loopVessels, desk }: Rig): boolean =>
  desk.tasks.wasEmpty && loopVessels.reduce((kg, vessel) => kg + network.chargeKg(vessel), 0) > REFILLED_KG;
