/**
 * Plant, watches, controller and book moved together, one moment at a time: a command acts at once, a step is 20 ms.
 * It keeps no log and refuses nothing but what the plant refuses; who may command what and when is the core's matter.
 */
import type { Condition } from '../../shared/schema/condition';
import type { Command, Outcome, PlantEvent } from '../plant/commandSpecs';
import type { Plant, PlantSnapshot } from '../plant/plantPort';
import { awake } from './conditions/awake';
import { compileCondition } from './conditions/compileCondition';
import type { Moment, SignalTable } from './conditions/moment';
import { settled } from './conditions/settled';
import {
  type Controller,
  type ControllerSnapshot,
  controller,
  type Transition,
} from './controller/controller';
import type { ControllerEvent } from './controller/sessionSetup';
import type { Mode, Stop } from './corePort';
import { bookCommand, bookEvents, emptyBook, type JobBook } from './jobBook';
import type { Standing } from './law/standing';
import { sessionSignals } from './sessionSignals';
import { watches } from './watches/registry';
import type { Edge } from './watches/watch';
import { watchBank } from './watches/watchBank';

/** What a session needs to know of its scenario; texts and vehicle stay with whoever shows and builds them. */
export interface SessionJob {
  readonly scenarioId: string;
  readonly scenarioHash: string;
  readonly hintLevels: number;
  readonly deliveries: readonly { readonly id: string; readonly done: Condition }[];
  /** `never` rules of the rubric that are critical: practice stops where one comes true. */
  readonly criticals: readonly {
    readonly id: string;
    readonly never: Condition;
    /** Signals its sentence quotes, by placeholder. */
    readonly quotes?: Readonly<Record<string, string>>;
  }[];
  /** What the law lets this person do; of a job without a scenario nothing is known. */
  readonly standing?: Standing;
}

interface Seen {
  step: number;
  readonly moment: Moment;
  readonly table: SignalTable;
  command: Command | null;
  edges: readonly Edge[];
  transitions: readonly Transition[];
  /** Nothing happened, now or in the moment before. */
  quiet: boolean;
}

/** Told after every command and every step, of one object that holds for that moment; what it keeps is its own affair. */
export type Observer = (seen: Readonly<Seen>) => void;

export interface RunSnapshot {
  readonly plant: PlantSnapshot;
  readonly book: JobBook;
  readonly controller: ControllerSnapshot;
  readonly watches: Float64Array;
  readonly criticals: readonly boolean[];
  /** Walked since the last moment that was looked at. */
  readonly transitions: readonly Transition[];
}

export interface SessionRun {
  readonly plant: Plant;
  readonly table: SignalTable;
  readonly moment: Moment;
  readonly controller: Controller;
  readonly book: JobBook;
  /** Raised whenever something changed that is not a number of the plant. */
  readonly revision: number;
  perform(command: Command): Outcome;
  /** Gives the watch that stops a run "until something happens", or null. */
  step(): string | null;
  hear(event: ControllerEvent): readonly Transition[];
  snapshot(): RunSnapshot;
  restore(snapshot: RunSnapshot): void;
}

const NOTHING: readonly PlantEvent[] = [];
const NO_TRANSITIONS: readonly Transition[] = [];

/** Commands that are the session's own: the plant never hears of them. */
const OWN: Readonly<Record<string, string>> = {
  begin: 'begun',
  finish: 'finished',
  hint: 'hinted',
  rewind: 'went-back',
};

export function sessionRun(job: SessionJob, mode: Mode, plant: Plant, observe?: Observer): SessionRun {
  const own = sessionSignals(plant, job.standing);
  const plantSignals = plant.signals.length;
  const specs = own.map(({ id, unit, kind }) => ({ id, unit, kind }));
  const table: SignalTable = { signals: [...plant.signals, ...specs] };
  const bank = watchBank(watches, table);
  const state = controller(mode);
  const criticals = job.criticals.map(({ id, never, quotes = {} }) => ({
    id,
    quotes,
    holds: compileCondition(never, table),
    settled: settled(never, table),
    was: false,
  }));
  const deliveries = job.deliveries.map(({ id, done }) => ({
    id,
    done: compileCondition(done, table),
    settled: settled(done, table),
  }));
  const openCriticals = awake(criticals, (one, now) => one.settled(now));
  const openDeliveries = awake(deliveries, (one, now) => one.settled(now));
  let book = emptyBook();
  let revision = 0;
  let events = NOTHING;
  let transitions = NO_TRANSITIONS;
  /** Something happened in the moment before; what held for it alone has to fall now. */
  let wasBusy = true;

  const moment: Moment = {
    value: (index) => (index < plantSignals ? plant.value(index) : own[index - plantSignals].read(book)),
    get events() {
      return events;
    },
  };
  const seen: Seen = { step: 0, moment, table, command: null, edges: [], transitions, quiet: false };
  const hear = (event: ControllerEvent): readonly Transition[] => {
    const walked = state.hear(event);
    if (walked.length > 0) transitions = [...transitions, ...walked];
    return walked;
  };
  const quoted = (quotes: Readonly<Record<string, string>>): Stop['quotes'] => {
    const found = Object.entries(quotes).flatMap(([name, source]) => {
      const index = table.signals.findIndex(({ id }) => id === source);
      return index < 0 ? [] : [{ name, source, value: moment.value(index), unit: table.signals[index].unit }];
    });
    return found.length < Object.keys(quotes).length ? null : found;
  };
  const stopAt = (rule: string, quotes: Readonly<Record<string, string>>): void => {
    hear({ type: 'rise.critical' });
    revision++;
    if (mode !== 'practice') return;
    book.stopped = { rule, step: plant.step, rewindStep: book.lastCommandStep, quotes: quoted(quotes) };
  };
  const lookAtCriticals = (quiet: boolean): void => {
    for (const critical of openCriticals.now(moment, quiet)) {
      const holds = critical.holds(moment);
      if (holds && !critical.was) stopAt(critical.id, critical.quotes);
      critical.was = holds;
    }
    openCriticals.looked(moment, quiet);
  };
  const lookAtDeliveries = (quiet: boolean): void => {
    for (const { id, done } of openDeliveries.now(moment, quiet)) {
      if (!book.deliveriesDone.includes(id) && done(moment)) {
        book.deliveriesDone.push(id);
        revision++;
      }
    }
    openDeliveries.looked(moment, quiet);
  };
  const tellObserver = (
    to: Observer,
    command: Command | null,
    edges: readonly Edge[],
    quiet: boolean,
  ): void => {
    seen.step = plant.step;
    seen.command = command;
    seen.edges = edges;
    seen.transitions = transitions;
    seen.quiet = quiet;
    to(seen);
  };
  /** Everything that follows from the moment as it stands; gives the first notable edge. */
  const lookRound = (isStep: boolean, command: Command | null): string | null => {
    const isBusy = command !== null || events.length > 0;
    const quiet = !isBusy && !wasBusy;
    wasBusy = isBusy;
    const edges = bank.look(moment, isStep, quiet);
    let notable: string | null = null;
    for (const edge of edges) {
      hear({ type: `${edge.to}.${edge.id}` } as ControllerEvent);
      if (edge.notable) notable ??= edge.id;
    }
    if (events.length > 0) bookEvents(book, plant.step, events, notable !== null);
    lookAtCriticals(quiet);
    lookAtDeliveries(quiet);
    if (edges.length > 0 || isBusy) revision++;
    if (observe) tellObserver(observe, command, edges, quiet);
    transitions = NO_TRANSITIONS;
    return notable;
  };

  return {
    plant,
    table,
    moment,
    controller: state,
    get book() {
      return book;
    },
    get revision() {
      return revision;
    },
    hear,
    perform(command) {
      const ownEvent = OWN[command.do];
      const outcome: Outcome = ownEvent ? { ok: true, events: [{ id: ownEvent }] } : plant.apply(command);
      if (!outcome.ok) return outcome;
      if (command.do === 'begin') book.stopped = null;
      if (command.do !== 'rewind') book.lastCommandStep = plant.step;
      bookCommand(book, plant.step, command);
      hear({ type: `do.${command.do}` });
      events = outcome.events;
      lookRound(false, command);
      events = NOTHING;
      return outcome;
    },
    step() {
      events = plant.advance();
      const notable = lookRound(true, null);
      events = NOTHING;
      return notable;
    },
    snapshot: () => ({
      plant: plant.snapshot(),
      book: structuredClone(book),
      controller: state.snapshot(),
      watches: bank.snapshot(),
      criticals: criticals.map(({ was }) => was),
      transitions,
    }),
    restore(from) {
      plant.restore(from.plant);
      book = structuredClone(from.book);
      wasBusy = true;
      state.restore(from.controller);
      bank.restore(from.watches);
      transitions = from.transitions;
      from.criticals.forEach((was, at) => {
        criticals[at].was = was;
      });
      revision++;
    },
  };
}
