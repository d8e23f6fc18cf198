/** Wheel chocks and the temperature control; someone licensed sent for; what the owner is told at the end. */

import type { TemperatureSetting } from '../../equipment/temperatureControl';
import type { Command } from '../commandSpecs';
import { sendForLicensed } from '../licensedAtWork';
import { done, type Rig, refuse } from '../rig';

export const handOver = {
  chock(rig: Rig, command: Command) {
    const on = command.to === 'on';
    if (rig.desk.tasks.chocked === on) return refuse('already');
    rig.desk.tasks.chocked = on;
    return done({ id: on ? 'chocked' : 'chocks-away' });
  },

  temperature(rig: Rig, command: Command) {
    const to = String(command.to) as TemperatureSetting;
    if (rig.desk.tasks.temperature === to) return refuse('already');
    rig.desk.tasks.temperature = to;
    return done({ id: 'temperature-set', subject: to });
  },

  arrange: (rig: Rig) => sendForLicensed(rig),

  'hand-over'(_rig: Rig, command: Command) {
    return done({ id: 'told', subject: String(command.told) });
  },
};
