/**
 * Service tools on a hose: screwed on and off, run, opened. What they do is links of the network; here only the desk is
 * set and what cannot be done is said.
 */
import type { HoseId } from '../../equipment/hoses';
import { OIL_INJECTOR } from '../../equipment/oilInjector';
import { RECOVERY_TANK } from '../../equipment/recoveryMachine';
import { STRONG_GAS_IDS } from '../../equipment/strongGas';
import type { DeviceId } from '../../equipment/tools';
import type { Command, PlantEvent } from '../commandSpecs';
import { joinDevice } from '../deviceLinks';
import { BESIDE, inletTaken } from '../inlets';
import { portsReached } from '../reach';
import { done, type Rig, refuse } from '../rig';
import type { DeviceOnDesk } from '../serviceDesk';

/** Pumps, and bottles whose own valve is all there is to open. */
const SWITCHED: ReadonlySet<string> = new Set(['recovery-machine', 'vacuum-pump', ...STRONG_GAS_IDS]);
const PA_PER_KPA = 1000;
const M3_PER_ML = 1e-6;

export const service = {
  attach(rig: Rig, command: Command) {
    const { id, state } = find(rig, command);
    const onto = String(command.onto) as HoseId;
    if (state.onto) return refuse('deviceOn');
    const beside = BESIDE.has(id);
    if (!beside && !rig.hoses.get(onto)?.spec.takesCan) return refuse('noInlet');
    if (!beside && inletTaken(rig, onto)) return refuse('inletTaken');
    state.onto = onto;
    joinDevice(rig, id);
    return done({ id: 'device-attached', subject: id });
  },

  detach(rig: Rig, command: Command) {
    const { id, state } = find(rig, command);
    if (!state.onto) return refuse('deviceLoose');
    const events: PlantEvent[] = [];
    if (state.running) events.push({ id: 'device-stopped', subject: id });
    state.onto = null;
    state.running = false;
    joinDevice(rig, id);
    events.push({ id: 'device-detached', subject: id }, ...opensToAir(rig, id));
    return done(...events);
  },

  run(rig: Rig, command: Command) {
    const { id, state } = find(rig, command);
    const running = command.to === 'on';
    if (!SWITCHED.has(id)) return refuse('noSwitch');
    if (state.running === running) return refuse('already');
    if (running && !state.onto) return refuse('deviceLoose');
    if (running && id === 'recovery-machine') {
      if (isFull(rig) && !rig.desk.hazards.bypass['tank-limit']) return refuse('tankFull');
      if (rig.desk.hazards.machineFouled) return refuse('machineFouled');
    }
    state.running = running;
    rig.desk.service.recovery.lowSteps = 0;
    rig.desk.service.blownOutKg = 0;
    joinDevice(rig, id);
    return done({ id: running ? 'device-started' : 'device-stopped', subject: id });
  },

  'tank-valve'(rig: Rig, command: Command) {
    const { tank } = rig.desk.service;
    const turn = Number(command.turn);
    if (tank.turn === turn) return refuse('already');
    const before = tank.turn;
    tank.turn = turn;
    joinDevice(rig, 'charging-tank');
    const events: PlantEvent[] = [];
    if (before === 0) events.push({ id: 'tank-opened', quantity: turn, unit: '1/16 turn' });
    if (turn === 0) events.push({ id: 'tank-shut' });
    return done(...events, ...opensToAir(rig, 'charging-tank'));
  },

  'stand-tank'(rig: Rig, command: Command) {
    const { tank } = rig.desk.service;
    const inverted = command.way === 'inverted';
    if (tank.inverted === inverted) return refuse('already');
    tank.inverted = inverted;
    rig.network.setTilt(rig.toolVessels.chargingTank, inverted ? 180 : 0);
    return done({ id: inverted ? 'tank-inverted' : 'tank-righted' });
  },

  regulator(rig: Rig, command: Command) {
    if (!rig.tools.includes('nitrogen')) return refuse('noNitrogen');
    const setPa = Number(command.kPa) * PA_PER_KPA;
    if (rig.desk.service.regulatorPa === setPa) return refuse('already');
    rig.desk.service.regulatorPa = setPa;
    joinDevice(rig, 'nitrogen');
    return done({ id: 'regulator-set', quantity: setPa, unit: 'Pa' }, ...opensToAir(rig, 'nitrogen'));
  },

  'inject-oil'(rig: Rig, command: Command) {
    const { desk } = rig;
    const injector = desk.service.devices['oil-injector'];
    if (!injector) return refuse('noInjector');
    if (!injector.onto) return refuse('deviceLoose');
    const m3 = Number(command.mL) * M3_PER_ML;
    if (m3 > desk.service.cartridgeM3 + 0.5 * M3_PER_ML) return refuse('cartridgeShort');
    const [port] = portsReached(rig, injector.onto);
    if (!port) return refuse('oilNoWay');
    desk.service.cartridgeM3 = Math.max(0, desk.service.cartridgeM3 - m3);
    const kg = rig.addOil(rig.benchOil, m3 * OIL_INJECTOR.oilKgPerM3, port.at.vessel);
    return done({ id: 'oil-injected', subject: port.side, quantity: kg, unit: 'kg' });
  },
};

/** Told when a valve or a regulator stands open with no hose on it. */
function opensToAir({ desk }: Rig, id: DeviceId): PlantEvent[] {
  const { devices, tank, regulatorPa } = desk.service;
  if (devices[id]?.onto) return [];
  const isOpen = (id === 'charging-tank' && tank.turn > 0) || (id === 'nitrogen' && regulatorPa > 0);
  return isOpen ? [{ id: 'opened-to-air', subject: id }] : [];
}

export function isFull({ network, toolVessels }: Pick<Rig, 'network' | 'toolVessels'>): boolean {
  return network.liquidShare(toolVessels.recoveryTank, 0) >= RECOVERY_TANK.mostLiquidShare;
}

function find({ desk }: Rig, command: Command): { id: DeviceId; state: DeviceOnDesk } {
  const id = String(command.device) as DeviceId;
  return { id, state: desk.service.devices[id] as DeviceOnDesk };
}
