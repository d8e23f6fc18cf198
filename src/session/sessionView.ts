/** The view of a session: plain data for panels and the text twin, put together from book, controller and controls. */
import type { CanView, HoseView, Mode, PortView, SessionView } from './corePort';
import type { SessionJob, SessionRun } from './sessionRun';
import { toldEvent } from './toldEvents';

export function sessionView(job: SessionJob, run: SessionRun, mode: Mode): SessionView {
  const { book, plant, controller } = run;
  const { session, ...regions } = controller.regions;
  return {
    revision: run.revision,
    step: plant.step,
    phase: session === 'work' ? 'work' : session === 'briefing' ? 'briefing' : 'debrief',
    regions,
    deliveries: job.deliveries.map(({ id }) => ({ id, done: book.deliveriesDone.includes(id) })),
    card: [...book.card],
    worn: [...book.worn],
    ports: idsOf(run, 'cap', 'on').map((id) => portView(run, id)),
    hoses: idsOf(run, 'hose', 'coupled').map((id) => hoseView(run, id)),
    cans: idsOf(run, 'can', 'valveSixteenths').map((id) => canView(run, id)),
    devices: idsOf(run, 'device', 'attached').map((id) => ({ id, onto: run.book.devicePlaces[id] ?? null })),
    opened: [...book.opened],
    sheetsRead: [...book.sheetsRead],
    asked: [...book.asked],
    told: [...book.told],
    conversionLabel: book.conversionLabel,
    happened: book.happened.map((one) => toldEvent(one, mode)),
    stopped: book.stopped,
    hints: { opened: book.hintsOpened, levels: job.hintLevels },
  };
}

/** Ids in the middle of `kind.<id>.last`, in signal order. */
function idsOf({ plant }: SessionRun, kind: string, last: string): string[] {
  const parts = plant.signals.map(({ id }) => id.split('.'));
  return parts
    .filter((part) => part.length === 3 && part[0] === kind && part[2] === last)
    .map((part) => part[1]);
}

const numberOf = ({ plant }: SessionRun, id: string): number => plant.value(plant.signalIndex(id));

/** NaN where this plant has no such signal. */
const orNaN = ({ plant }: SessionRun, id: string): number => {
  const index = plant.signals.findIndex((signal) => signal.id === id);
  return index < 0 ? Number.NaN : plant.value(index);
};

function portView(run: SessionRun, id: string): PortView {
  const { book } = run;
  const [hose] = Object.entries(book.hosePorts).find(([, port]) => port === id) ?? [null];
  return {
    id,
    capOn: numberOf(run, `cap.${id}.on`) === 1,
    capLetter: ([null, 'L', 'H'] as const)[orNaN(run, `cap.${id}.letter`)] ?? null,
    covered: coveredOf(run, id),
    diameterM: orNaN(run, `port.${id}.diameterM`),
    traced: book.traced.includes(id),
    judged: book.judged[id] ?? null,
    hose,
  };
}

function coveredOf(run: SessionRun, id: string): boolean | null {
  const on = orNaN(run, `cover.${id}.on`);
  return Number.isNaN(on) ? null : on === 1;
}

function hoseView(run: SessionRun, id: string): HoseView {
  return {
    id,
    couplerM: orNaN(run, `hose.${id}.couplerM`),
    port: run.book.hosePorts[id] ?? null,
    couplerOpen: numberOf(run, `hose.${id}.couplerOpen`) === 1,
    route: run.book.routes[id] ?? [],
    caught: numberOf(run, `hose.${id}.caught`) === 1,
  };
}

function canView(run: SessionRun, id: string): CanView {
  return {
    id,
    onto: run.book.canInlets[id] ?? null,
    valveSixteenths: numberOf(run, `can.${id}.valveSixteenths`),
    tiltDeg: numberOf(run, `can.${id}.tiltDeg`),
    place: run.book.canPlaces[id] ?? 'mat',
  };
}
