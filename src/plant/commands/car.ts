/** The car's own controls and the bay door. The clutch, fans and switches answer by themselves, in the loop. */
import { hasEngine } from '../../loop/car/hasEngine';
import type { Command } from '../commandSpecs';
import { mayTurn } from '../mayTurn';
import { done, type Rig, refuse } from '../rig';

export const car = {
  door(rig: Rig, command: Command) {
    const open = command.to === 'open';
    if (rig.desk.doorOpen === open) return refuse('already');
    rig.desk.doorOpen = open;
    return done({ id: open ? 'door-opened' : 'door-shut' });
  },

  engine(rig: Rig, command: Command) {
    const rpm = Number(command.rpm);
    const before = rig.desk.engineRpm;
    if (!hasEngine(rig.vehicle)) return refuse('noEngine');
    if (rpm === before) return refuse('already');
    if (rpm > 0 && rpm < 600) return refuse('engineStalls');
    rig.desk.engineRpm = rpm;
    if (rpm === 0) return done({ id: 'engine-stopped' });
    return done({ id: before === 0 ? 'engine-started' : 'engine-speed', quantity: rpm, unit: 'rpm' });
  },

  ac(rig: Rig, command: Command) {
    const on = command.to === 'on';
    if (rig.desk.acOn === on) return refuse('already');
    rig.desk.acOn = on;
    return done({ id: on ? 'ac-on' : 'ac-off' });
  },

  hood(rig: Rig, command: Command) {
    const open = command.to === 'open';
    if (rig.desk.search.hoodOpen === open) return refuse('already');
    rig.desk.search.hoodOpen = open;
    return done({ id: open ? 'hood-opened' : 'hood-shut' });
  },

  clean(rig: Rig, command: Command) {
    const part = String(command.part);
    const turns = mayTurn(rig);
    if (turns) return refuse(turns);
    rig.clean(part);
    return done({ id: 'cleaned', subject: part });
  },

  blower(rig: Rig, command: Command) {
    const speed = Number(command.speed);
    if (rig.desk.blower === speed) return refuse('already');
    rig.desk.blower = speed;
    return done({ id: 'blower-set', quantity: speed, unit: 'step' });
  },

  windows(rig: Rig, command: Command) {
    const open = command.to === 'open';
    if (rig.desk.windowsOpen === open) return refuse('already');
    rig.desk.windowsOpen = open;
    return done({ id: open ? 'windows-opened' : 'windows-shut' });
  },

  air(rig: Rig, command: Command) {
    const recirculated = command.to === 'recirculated';
    if (rig.desk.recirculated === recirculated) return refuse('already');
    rig.desk.recirculated = recirculated;
    return done({ id: recirculated ? 'air-recirculated' : 'air-fresh' });
  },
};
