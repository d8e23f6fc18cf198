/** Everything the bay draws, out of the session's view and channels. Cues only: no channel of the truth is read here. */
import type { BayFrame, CanFrame, CapLook, HoseFrame, PortFrame } from '../bay/bayFrame';
import { CAN, couplerId } from '../bay/itemIds';
import { inWords, writeMass } from '../instruments/displayUnits';
import { boreOf, letterOf } from '../layout/bores';
import type { BoreMm, Layout } from '../layout/layout';
import type { SessionModel } from '../panels/sessionModel';
import type { WorkUi } from '../panels/workUi';
import type { PortView } from '../session/corePort';
import { bayCuesOf } from './bayCuesOf';
import { bayHoseOf } from './bayHoses';
import { bayPrintOf } from './bayPrintOf';
import { canInUse } from './canInUse';
import { freeEnds } from './freeEnds';

function portsOf(session: SessionModel): Record<string, PortFrame> {
  return Object.fromEntries(session.view().ports.map((port) => [port.id, portFrame(port)]));
}

/** A cap on a strap hangs beside its port; one that was gone when the car came has left its strap behind. */
function portFrame({ capOn, capLetter, covered, diameterM }: PortView): PortFrame {
  const bore = boreOf(diameterM);
  return { cap: capLook(capOn, capLetter, bore), strap: true, bore, covered: covered === true };
}

function capLook(isOn: boolean, letter: PortView['capLetter'], bore: BoreMm): CapLook {
  if (!isOn) return 'missing';
  if (letter === null) return 'blank';
  return letter === letterOf(bore) ? 'letter' : 'swapped';
}

function hosesOf(session: SessionModel): HoseFrame[] {
  return session.view().hoses.flatMap((hose) => {
    const id = bayHoseOf(hose.id);
    return id === null
      ? []
      : [
          {
            id,
            port: hose.port,
            open: hose.couplerOpen,
            route: hose.route,
            caught: hose.caught,
            ...(hose.couplerM > 0 && { bore: boreOf(hose.couplerM) }),
            ...skinOf(session, hose.id),
          },
        ];
  });
}

function skinOf(session: SessionModel, hose: string): Pick<HoseFrame, 'frost' | 'sweat' | 'spraying'> {
  return {
    frost: orZero(session.signal(`frost.hose-${hose}`)),
    sweat: orZero(session.signal(`sweat.hose-${hose}`)),
    spraying: session.signal(`spray.${hose}`) === 1,
  };
}

function canOf(session: SessionModel, tool: string | null): CanFrame | null {
  const can = canInUse(session.view().cans, tool);
  if (!can) return null;
  const level = session.signal(`can.${can.id}.frostLevelRatio`);
  const massKg = session.signal('scale.massKg');
  const weighed = can.place === 'scale' && !Number.isNaN(massKg);
  return {
    id: can.id,
    print: session.canPrint,
    tiltDeg: can.tiltDeg,
    valveSixteenths: can.valveSixteenths,
    mounted: can.onto !== null,
    onto: can.onto === 'charging' || can.onto === 'utility' ? can.onto : null,
    frostLevel: session.signal(`can.${can.id}.chilled`) === 1 && !Number.isNaN(level) ? level : null,
    heft: orZero(session.signal(`can.${can.id}.heftRatio`)),
    onScale: can.place === 'scale',
    readout: weighed ? inWords(writeMass(massKg, session.units().mass)) : null,
  };
}

type Cover = 'frost' | 'sweat';

/** What of a bay can be covered, with the channels that say so, listed once: a frame is made for every picture. */
const listed = new WeakMap<Layout, readonly ({ readonly id: string } & Readonly<Record<Cover, string>>)[]>();

function coverable(layout: Layout) {
  const known = listed.get(layout);
  if (known) return known;
  const ids = [...layout.lines, ...layout.parts].map(({ id }) => id);
  const channels = ids.map((id) => ({ id, frost: `frost.${id}`, sweat: `sweat.${id}` }));
  listed.set(layout, channels);
  return channels;
}

/** Shares of a cue by the id in its middle: `frost.suction` under `suction`. */
function covers({ layout, signal }: SessionModel, cue: Cover): Record<string, number> {
  const shares: Record<string, number> = {};
  for (const one of coverable(layout)) {
    const share = signal(one[cue]);
    if (!Number.isNaN(share)) shares[one.id] = share;
  }
  return shares;
}

function fans(session: SessionModel): Record<string, boolean> {
  const parts = session.layout.parts.filter((part) => part.kind.startsWith('fan'));
  return Object.fromEntries(parts.map(({ id }) => [id, session.signal(`fan.${id}.turning`) === 1]));
}

/** What the bay takes to be in hand: a coupler that is still loose, or the can. */
function heldOf(session: SessionModel, tool: string | null): string | null {
  const loose = (id: string): boolean =>
    session.view().hoses.some((hose) => hose.id === id && hose.port === null);
  if (tool === 'charging') return loose('charging') ? couplerId('charging') : null;
  if (tool === 'gauge-set')
    return loose('gauge-low') ? couplerId('low') : loose('gauge-high') ? couplerId('high') : null;
  return tool?.startsWith('can-') ? CAN : null;
}

/** The line of a traced port, for as long as that port is looked at. */
function marked(session: SessionModel, ui: WorkUi): string[] {
  const open = ui.open();
  const port = open?.kind === 'port' ? session.view().ports.find((one) => one.id === open.port) : undefined;
  if (!port?.traced) return [];
  return session.layout.ports
    .filter(({ id }) => id === port.id)
    .map(({ on }) => ('line' in on ? on.line : on.part));
}

function lookedAt(ui: WorkUi): string | null {
  const open = ui.open();
  if (open?.kind === 'part') return open.part;
  return open?.kind === 'port' ? open.port : null;
}

const orZero = (value: number): number => (Number.isNaN(value) ? 0 : value);

export function bayFrameOf(
  { model, told }: { readonly model: SessionModel; readonly told: () => unknown },
  ui: WorkUi,
  print = bayPrintOf(model),
): BayFrame {
  told();
  const tool = ui.heldTool();
  return {
    ports: portsOf(model),
    hoses: hosesOf(model),
    can: canOf(model, tool),
    ends: freeEnds(model),
    engineRpm: orZero(model.signal('engine.rpm')),
    clutchEngaged: model.signal('clutch.turning') === 1,
    fansTurning: fans(model),
    frost: covers(model, 'frost'),
    sweat: covers(model, 'sweat'),
    condenserDirt: orZero(model.signal('dirt.condenser')),
    ...bayCuesOf(model),
    looked: lookedAt(ui),
    marked: marked(model, ui),
    keepClearShown: tool === 'charging' || tool === 'gauge-set',
    held: heldOf(model, tool),
    assessed: model.mode === 'assessed',
    ...print,
  };
}
