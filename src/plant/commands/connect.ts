/**
 * Caps, couplers and hoses. A coupler goes on in two steps: snapped on (the hose reads itself), then its valve turned in,
 * which presses the port's core and joins hose and car. What fits is decided in equipment/fittings.
 */
import { fit } from '../../equipment/fittings';
import {
  boreOf,
  CORE_CDA_M2,
  type HoseId,
  MANIFOLD_CDA_M2,
  OPEN_END_CDA_M2,
  PURGE_CDA_M2,
} from '../../equipment/hoses';
import { defaultRoute, isWay } from '../../layout/zones';
import type { Command, Outcome } from '../commandSpecs';
import type { HoseOnDesk } from '../desk';
import { fittingAt } from '../fittingAt';
import { hoseOn } from '../hoseOn';
import { dropLink, joinToRoom, joinVessels } from '../links';
import { notFree } from '../notFree';
import { done, type Rig, type RigHose, type RigPort, refuse } from '../rig';

export const connect = {
  cover(rig: Rig, command: Command) {
    const port = String(command.port);
    const on = command.to === 'on';
    if (rig.desk.covers[port] === on) return refuse('already');
    if (on && hoseOn(rig, port)) return refuse('couplerUnderCover');
    rig.desk.covers[port] = on;
    return done({ id: on ? 'cover-on' : 'cover-off', subject: port });
  },

  cap(rig: Rig, command: Command) {
    const port = String(command.port);
    const on = command.to === 'on';
    if (rig.desk.caps[port] === on) return refuse('already');
    if (on && hoseOn(rig, port)) return refuse('couplerInTheWay');
    rig.desk.caps[port] = on;
    return done({ id: on ? 'cap-on' : 'cap-off', subject: port });
  },

  couple(rig: Rig, command: Command) {
    const { hose, state } = find(rig, command);
    const port = rig.ports.get(String(command.port)) as RigPort;
    if (!hose.spec.coupler) return refuse('noCoupler');
    if (state.caught) return refuse('hoseTorn');
    if (state.port) return refuse('alreadyCoupled');
    const hindrance = notFree(rig, port.id);
    if (hindrance) return hindrance;
    const how = fit(hose.spec.coupler, fittingAt(rig, port.id));
    const defeats = how !== 'fits' && rig.desk.hazards.adapters.includes(hose.spec.id);
    if (how !== 'fits' && !defeats) return refuse(`fit.${how}`);
    const route = wayOf(rig, port.id, command);
    if (!route) return refuse('noWay');
    state.port = port.id;
    state.open = false;
    state.route = route;
    if (state.endOpen) endShut(rig, hose, state);
    return done({ id: 'coupled', subject: hose.spec.id }, { id: 'coupled-port', subject: port.id });
  },

  coupler(rig: Rig, command: Command) {
    const { hose, state } = find(rig, command);
    const open = command.to === 'open';
    if (!state.port) return couplerOffPort(rig, hose, state, open);
    if (state.open === open) return refuse('already');
    state.open = open;
    const id = `core:${hose.spec.id}`;
    if (!open) {
      dropLink(rig.network, id);
      return done({ id: 'coupler-shut', subject: hose.spec.id });
    }
    const port = rig.ports.get(state.port) as RigPort;
    joinVessels(rig.network, id, port.at, { vessel: hose.vessel, cell: 0, height: 'bulk' }, CORE_CDA_M2);
    return done({ id: 'coupler-opened', subject: hose.spec.id }, { id: 'opened-port', subject: port.id });
  },

  uncouple(rig: Rig, command: Command) {
    const { hose, state } = find(rig, command);
    if (!state.port) return refuse('notCoupled');
    const wasOpen = state.open;
    const port = state.port;
    letGo(rig, hose, state);
    const off = { id: 'uncoupled', subject: hose.spec.id };
    if (!wasOpen) return done(off);
    const heldKg = rig.network.chargeKg(hose.vessel);
    return done(off, { id: 'sprayed', subject: port, quantity: heldKg, unit: 'kg' });
  },

  route(rig: Rig, command: Command) {
    const { state } = find(rig, command);
    if (!state.port) return refuse('notCoupled');
    const route = wayOf(rig, state.port, command);
    if (!route) return refuse('noWay');
    state.route = route;
    state.dangerSteps = 0;
    return done({ id: 'rerouted', subject: String(command.hose) });
  },

  manifold(rig: Rig, command: Command) {
    const side = command.side === 'low' ? 'low' : 'high';
    const turn = Number(command.turn);
    const hose = rig.hoses.get(side === 'low' ? 'gauge-low' : 'gauge-high');
    const utility = rig.hoses.get('utility');
    if (!hose || !utility) return refuse('noGaugeSet');
    if (rig.desk.manifold[side] === turn) return refuse('already');
    rig.desk.manifold[side] = turn;
    const id = `manifold:${side}`;
    const bulk = { cell: 0, height: 'bulk' } as const;
    const [from, to] = [
      { vessel: hose.vessel, ...bulk },
      { vessel: utility.vessel, ...bulk },
    ];
    joinVessels(rig.network, id, from, to, MANIFOLD_CDA_M2, turn / 16, boreOf(hose.spec));
    if (turn === 0) dropLink(rig.network, id);
    return done({ id: turn > 0 ? 'manifold-opened' : 'manifold-shut', subject: side });
  },

  purge(rig: Rig, command: Command) {
    const { hose, state } = find(rig, command);
    const open = command.to === 'open';
    if (state.purging === open) return refuse('already');
    state.purging = open;
    const id = `purge:${hose.spec.id}`;
    if (open) joinToRoom(rig.network, id, hose.vessel, PURGE_CDA_M2);
    else dropLink(rig.network, id);
    if (!open) return done({ id: 'purge-shut', subject: hose.spec.id });
    const outward = rig.network.pressurePa(hose.vessel) > rig.airPressurePa;
    return done({ id: outward ? 'purge-opened' : 'air-let-in', subject: hose.spec.id });
  },
};

/** Takes a hose off its port: the port's core closes; a coupler still open leaves the hose's end open to the air. */
export function letGo(rig: Rig, hose: RigHose, state: HoseOnDesk): void {
  dropLink(rig.network, `core:${hose.spec.id}`);
  if (state.open) {
    state.endOpen = true;
    joinToRoom(rig.network, `end:${hose.spec.id}`, hose.vessel, OPEN_END_CDA_M2);
  }
  state.port = null;
  state.open = false;
  state.route = [];
  state.dangerSteps = 0;
}

function endShut(rig: Rig, hose: RigHose, state: HoseOnDesk): void {
  state.endOpen = false;
  dropLink(rig.network, `end:${hose.spec.id}`);
}

function couplerOffPort(rig: Rig, hose: RigHose, state: HoseOnDesk, open: boolean): Outcome {
  if (open || !state.endOpen) return refuse('notCoupled');
  endShut(rig, hose, state);
  return done({ id: 'coupler-shut', subject: hose.spec.id });
}

/** The zones named, the usual way where none are, or null where no hose could lie so. */
function wayOf(rig: Rig, port: string, command: Command): readonly string[] | null {
  const named = String(command.route ?? '')
    .split(',')
    .filter((zone) => zone !== '');
  if (named.length === 0) return defaultRoute(rig.layout, port);
  return isWay(rig.layout, port, named) ? named : null;
}

function find(rig: Rig, command: Command): { hose: RigHose; state: HoseOnDesk } {
  const id = String(command.hose) as HoseId;
  return { hose: rig.hoses.get(id) as RigHose, state: rig.desk.hoses[id] as HoseOnDesk };
}
