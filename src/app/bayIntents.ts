/** What a hand meant in the bay, as commands. Targets are only offered where something fits; judging it is the core's. */
import type { BayCallbacks } from '../bay/bayApi';
import {
  CAN,
  CAN_TILT,
  CAN_VALVE,
  endId,
  hoseOfCoupler,
  inletOfEnd,
  MAT,
  portOfCap,
  SCALE,
} from '../bay/itemIds';
import type { SessionModel } from '../panels/sessionModel';
import type { WorkUi } from '../panels/workUi';
import { coreHoseOf } from './bayHoses';
import { canInUse } from './canInUse';
import { freeEnds } from './freeEnds';
import type { RunningSession } from './session';

const canInHand = (session: SessionModel, ui: WorkUi): string | null =>
  canInUse(session.view().cans, ui.heldTool())?.id ?? null;

function toggleCoupler(ui: WorkUi, hoseId: string): void {
  const hose = ui.session.view().hoses.find((one) => one.id === hoseId);
  if (hose?.port) ui.session.send({ do: 'coupler', hose: hoseId, to: hose.couplerOpen ? 'shut' : 'open' });
}

/** The form of the tool a hose belongs to. */
function showHose(ui: WorkUi, hoseId: string): void {
  ui.show({ kind: 'tool', tool: hoseId === 'charging' ? 'charging' : 'gauge-set' });
}

/** A press on a coupler opens no valve: it shows what can be done there. */
function showCoupler(ui: WorkUi, hoseId: string): void {
  const hose = ui.session.view().hoses.find((one) => one.id === hoseId);
  if (hose?.port) ui.show({ kind: 'port', port: hose.port });
  else showHose(ui, hoseId);
}

/** What lies over a port comes off first: its cover, then its cap. */
function toggleCap(ui: WorkUi, portId: string): void {
  const port = ui.session.view().ports.find((one) => one.id === portId);
  if (port?.covered) ui.session.send({ do: 'cover', port: portId, to: 'off' });
  else if (port) ui.session.send({ do: 'cap', port: portId, to: port.capOn ? 'off' : 'on' });
}

const CAN_THINGS: readonly string[] = [CAN, CAN_VALVE, CAN_TILT];

function pick(ui: WorkUi, session: SessionModel, id: string): void {
  const bayHose = hoseOfCoupler(id);
  const capPort = portOfCap(id);
  const inlet = inletOfEnd(id);
  const can = canInHand(session, ui);
  if (bayHose) showCoupler(ui, coreHoseOf(bayHose));
  else if (inlet) showHose(ui, inlet);
  else if (capPort) toggleCap(ui, capPort);
  else if (session.layout.ports.some((port) => port.id === id)) ui.show({ kind: 'port', port: id });
  else if (CAN_THINGS.includes(id) && can) ui.show({ kind: 'tool', tool: can });
  else look(ui, id);
}

function look(ui: WorkUi, partId: string): void {
  // a pipe is looked at and followed; only parts are examined
  if (ui.session.choices('part').includes(partId)) ui.session.send({ do: 'look', at: partId });
  ui.show({ kind: 'part', part: partId });
}

function drop(
  ui: WorkUi,
  session: SessionModel,
  item: string,
  target: string,
  zones: readonly string[],
): void {
  const bayHose = hoseOfCoupler(item);
  const can = canInHand(session, ui);
  if (bayHose) dropCoupler(ui, coreHoseOf(bayHose), target, zones);
  else if (portOfCap(item)) toggleCap(ui, portOfCap(item) ?? '');
  else if (item === CAN && can && (target === MAT || target === SCALE)) {
    ui.session.send({ do: 'place', can, at: target === MAT ? 'mat' : 'scale' });
  } else if (can) join(ui, can, item, target);
}

/** A can and the end of a hose are screwed together, whichever of them was brought to the other; let go elsewhere, they part. */
function join(ui: WorkUi, can: string, item: string, target: string): void {
  const end = inletOfEnd(item);
  const joined = ui.session.view().cans.find(({ id }) => id === can)?.onto ?? null;
  const onto = item === CAN ? inletOfEnd(target) : target === CAN ? end : null;
  if (onto) ui.session.send({ do: 'tap', can, onto });
  else if (target !== CAN && end !== null && end === joined) ui.session.send({ do: 'untap', can });
}

function dropCoupler(ui: WorkUi, hose: string, target: string, zones: readonly string[]): void {
  const now = ui.session.view().hoses.find((one) => one.id === hose);
  const route = zones.join(',');
  if (target === MAT) {
    if (now?.port) ui.session.send({ do: 'uncouple', hose });
  } else if (now?.port === target) ui.session.send({ do: 'route', hose, route });
  else ui.session.send({ do: 'couple', hose, port: target, route });
}

/** Ports this hose's coupler goes on: free, under no cover, and of its fitting, or any with a loose adapter. */
function fittingPorts(session: SessionModel, hose: string): string[] {
  const { ports, hoses } = session.view();
  const couplerM = hoses.find(({ id }) => id === hose)?.couplerM ?? Number.NaN;
  const isAdapted = session.signal(`hose.${hose}.adapter`) === 1;
  return ports
    .filter((port) => (port.hose === null || port.hose === hose) && port.covered !== true)
    .filter((port) => port.diameterM === couplerM || (isAdapted && couplerM > 0))
    .map(({ id }) => id);
}

/** Ends the can that is drawn goes on: none while it is on a hose. */
function endsForCan(session: SessionModel, ui: WorkUi): string[] {
  const can = session.view().cans.find(({ id }) => id === canInHand(session, ui));
  return can?.onto === null ? freeEnds(session).map(endId) : [];
}

export function bayIntents({ model }: RunningSession, ui: WorkUi): BayCallbacks {
  return {
    onPick: (id) => pick(ui, model, id),
    onDrop(item, target, zones) {
      drop(ui, model, item, target, zones);
      return ui.caution() === null;
    },
    onCoupler: (hose) => toggleCoupler(ui, coreHoseOf(hose)),
    onTilt(degrees) {
      const can = canInHand(model, ui);
      if (can) ui.session.send({ do: 'tilt', can, degrees });
    },
    onValve(sixteenths) {
      const can = canInHand(model, ui);
      if (can) ui.session.send({ do: 'can-valve', can, turn: sixteenths });
    },
    onShake() {
      const can = canInHand(model, ui);
      if (!can) return;
      if (model.view().cans.find(({ id }) => id === can)?.place !== 'hand')
        ui.session.send({ do: 'place', can, at: 'hand' });
      ui.session.send({ do: 'shake', can });
    },
    onLook: (id) => pick(ui, model, id),
    validTargets(item) {
      if (item === CAN) return [MAT, SCALE, ...endsForCan(model, ui)];
      if (inletOfEnd(item)) return endsForCan(model, ui).includes(item) ? [CAN, MAT] : [MAT];
      const bayHose = hoseOfCoupler(item);
      return bayHose ? [...fittingPorts(model, coreHoseOf(bayHose)), MAT] : [];
    },
  };
}
