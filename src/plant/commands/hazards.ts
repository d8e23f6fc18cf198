/** Deeds that the trade warns of, and what is done about them: heater, pit, service plug, bridges, loose adapter, sealer test. */
import type { HoseId } from '../../equipment/hoses';
import { SEALER } from '../../equipment/sealerTest';
import type { Command } from '../commandSpecs';
import type { Bypass } from '../hazardDesk';
import { notFree } from '../notFree';
import { done, type Rig, type RigPort, refuse } from '../rig';
import { STEP_S } from '../stepTime';

export const hazards = {
  heater({ desk }: Rig, command: Command) {
    const on = command.to === 'on';
    if (desk.hazards.heaterOn === on) return refuse('already');
    desk.hazards.heaterOn = on;
    return done({ id: on ? 'heater-on' : 'heater-off' });
  },

  pit({ desk, place }: Rig, command: Command) {
    const isIn = command.to === 'in';
    if (place.kind !== 'garage-with-pit') return refuse('noPit');
    if (desk.hazards.inPit === isIn) return refuse('already');
    desk.hazards.inPit = isIn;
    return done({ id: isIn ? 'pit-in' : 'pit-out' });
  },

  isolate(rig: Rig, command: Command) {
    const { hazards: own } = rig.desk;
    const on = command.to === 'on';
    if (rig.vehicle.compressor.kind !== 'electric') return refuse('noHighVoltage');
    if ((own.isolatedAt !== null) === on) return refuse('already');
    own.isolatedAt = on ? rig.step() : null;
    return done({ id: on ? 'isolated' : 'reconnected' });
  },

  bypass({ desk, tools }: Rig, command: Command) {
    const what = String(command.what) as Bypass;
    const on = command.to === 'on';
    if (what === 'tank-limit' && !tools.includes('recovery-machine')) return refuse('notOnBench');
    if (desk.hazards.bypass[what] === on) return refuse('already');
    desk.hazards.bypass[what] = on;
    return done({ id: on ? 'bypass-on' : 'bypass-off', subject: what });
  },

  adapter(rig: Rig, command: Command) {
    const id = String(command.hose) as HoseId;
    const { desk, hoses } = rig;
    const on = command.to === 'on';
    if (!rig.tools.includes('loose-adapter')) return refuse('notOnBench');
    if (!hoses.get(id)?.spec.coupler) return refuse('noCoupler');
    if (desk.hoses[id]?.port) return refuse('alreadyCoupled');
    if (desk.hazards.adapters.includes(id) === on) return refuse('already');
    const others = desk.hazards.adapters.filter((one) => one !== id);
    desk.hazards.adapters = on ? [...others, id] : others;
    return done({ id: on ? 'adapter-on' : 'adapter-off', subject: id });
  },

  'test-sealer'(rig: Rig, command: Command) {
    const port = rig.ports.get(String(command.port)) as RigPort;
    const { hazards: own } = rig.desk;
    if (!rig.tools.includes('sealer-test')) return refuse('notOnBench');
    if (own.sealerTest.port !== null) return refuse('sampling');
    const hindrance = notFree(rig, port.id);
    if (hindrance) return hindrance;
    const endsAt = rig.step() + Math.round(SEALER.testS / STEP_S);
    own.sealerTest = { port: port.id, endsAt, found: null };
    return done({ id: 'sealer-test-begun', subject: port.id });
  },
};
