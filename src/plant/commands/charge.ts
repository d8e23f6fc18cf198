/** The small can: screwed on, valve, tilt, shaking, and where it stands. Its inside is a vessel of the network. */
import {
  BATH_TEMPERATURE_K,
  CAN_AIR_UA_W_PER_K,
  CAN_BATH_UA_W_PER_K,
  CAN_HAND_UA_W_PER_K,
  CAN_VALVE_CDA_M2,
  HAND_TEMPERATURE_K,
  HOT_WATER_K,
  SHAKE_S,
} from '../../equipment/cans';
import type { HoseId } from '../../equipment/hoses';
import type { Command, PlantEvent } from '../commandSpecs';
import type { CanOnDesk, Place } from '../desk';
import { inletTaken } from '../inlets';
import { dropLink, joinVessels } from '../links';
import { done, type Rig, type RigCan, refuse } from '../rig';
import { STEP_S } from '../stepTime';

export const charge = {
  tap(rig: Rig, command: Command) {
    const { can, state } = find(rig, command);
    const onto = String(command.onto) as HoseId;
    if (state.onto) return refuse('canTapped');
    const hose = rig.hoses.get(onto);
    if (!hose?.spec.takesCan) return refuse('noTap');
    if (inletTaken(rig, onto)) return refuse('tapTaken');
    takeFromStore(rig, can.spec.id);
    state.onto = onto;
    joinCan(rig, can, state);
    return done({ id: 'can-tapped', subject: can.spec.id });
  },

  untap(rig: Rig, command: Command) {
    const { can, state } = find(rig, command);
    if (!state.onto) return refuse('canLoose');
    const wasOpen = state.turn > 0;
    dropLink(rig.network, `can:${can.spec.id}`);
    state.onto = null;
    state.turn = 0;
    const events: PlantEvent[] = [{ id: 'can-untapped', subject: can.spec.id }];
    if (wasOpen) events.push({ id: 'can-untapped-open', subject: can.spec.id });
    return done(...events);
  },

  'can-valve'(rig: Rig, command: Command) {
    const { can, state } = find(rig, command);
    const turn = Number(command.turn);
    if (!state.onto) return refuse('canLoose');
    if (state.turn === turn) return refuse('already');
    const before = state.turn;
    state.turn = turn;
    joinCan(rig, can, state);
    const events: PlantEvent[] = [];
    if (before === 0)
      events.push({ id: 'can-opened', subject: can.spec.id, quantity: turn, unit: '1/16 turn' });
    if (turn === 0) events.push({ id: 'can-shut', subject: can.spec.id });
    return done(...events);
  },

  tilt(rig: Rig, command: Command) {
    const { can, state } = find(rig, command);
    const degrees = Number(command.degrees);
    if (state.tiltDeg === degrees) return refuse('already');
    if (state.place === 'scale' && degrees > 0 && degrees < 180) return refuse('leansOnScale');
    const before = state.tiltDeg;
    state.tiltDeg = degrees;
    rig.network.setTilt(can.vessel, degrees);
    const inverted = before <= 90 && degrees > 90;
    const turned = inverted ? 'can-inverted' : 'can-tilted';
    return done({ id: turned, subject: can.spec.id, quantity: degrees, unit: 'deg' });
  },

  shake(rig: Rig, command: Command) {
    const { can, state } = find(rig, command);
    if (state.place !== 'hand') return refuse('notInHand');
    state.shakenUntil = rig.step() + Math.round(SHAKE_S / STEP_S);
    rig.network.setShaking(can.vessel, 1);
    return done({ id: 'can-shaken', subject: can.spec.id });
  },

  place(rig: Rig, command: Command) {
    const { can, state } = find(rig, command);
    const at = String(command.at) as Place;
    if (state.place === at) return refuse('already');
    if (at === 'scale' && state.tiltDeg > 0 && state.tiltDeg < 180) return refuse('leansOnScale');
    if (at === 'scale' || state.place === 'scale') rig.unsettle('scale');
    takeFromStore(rig, can.spec.id);
    state.place = at;
    const [surroundK, conductance] = aroundCan(rig, at);
    rig.network.setSurroundings(can.vessel, 0, surroundK, conductance);
    if (at !== 'hand') rig.network.setShaking(can.vessel, 0);
    return done({ id: 'can-placed', subject: can.spec.id });
  },
};

/** A can that was put away is taken out again by using it. */
function takeFromStore({ desk }: Rig, can: string): void {
  desk.tasks.stored = desk.tasks.stored.filter((id) => id !== can);
}

/** Temperature round a can and conductance to it. */
function aroundCan({ ambientK }: Rig, at: Place): readonly [number, number] {
  if (at === 'hand') return [HAND_TEMPERATURE_K, CAN_HAND_UA_W_PER_K];
  if (at === 'hot-water') return [HOT_WATER_K, CAN_BATH_UA_W_PER_K];
  return at === 'bath' ? [BATH_TEMPERATURE_K, CAN_BATH_UA_W_PER_K] : [ambientK, CAN_AIR_UA_W_PER_K];
}

function joinCan(rig: Rig, can: RigCan, state: CanOnDesk): void {
  const id = `can:${can.spec.id}`;
  const hose = rig.hoses.get(state.onto as HoseId);
  if (!hose) return;
  if (state.turn === 0) {
    dropLink(rig.network, id);
    return;
  }
  const from = { vessel: can.vessel, cell: 0, height: 'top' } as const;
  const to = { vessel: hose.vessel, cell: 0, height: 'bulk' } as const;
  joinVessels(rig.network, id, from, to, CAN_VALVE_CDA_M2, state.turn / 16);
}

function find(rig: Rig, command: Command): { can: RigCan; state: CanOnDesk } {
  const id = String(command.can);
  return { can: rig.cans.get(id) as RigCan, state: rig.desk.cans[id] as CanOnDesk };
}
