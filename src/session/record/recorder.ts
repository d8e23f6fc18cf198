/**
 * Writes the record of a session while it runs; one that went back has to be run again from its log. Set back to a mark in
 * a record it has written, it goes on from there, and takes over the rest of it where the two have become one again.
 */
import type { Rule } from '../../../shared/schema/rubric';
import type { Plant } from '../../plant/plantPort';
import { STEPS_PER_SECOND } from '../clock';
import type { Moment, SignalTable } from '../conditions/moment';
import type { SessionLog } from '../corePort';
import { isRewind } from '../liveLog';
import type { Observer } from '../sessionRun';
import { measure, type Whole } from './measures';
import {
  indexOfSignal,
  type RecordedAction,
  type RecordedEvent,
  type RecordedTransition,
  type SessionRecord,
} from './record';
import { type Rows, type RowWriter, rowWriter } from './rowWriter';
import { type RuleEdges, ruleEdges } from './ruleEdges';

/** What is right in this scenario: needed to measure, never shown before the debrief. */
export interface Answer {
  readonly causes: readonly string[];
  /** Faults that are in the car, each once; none where nothing is said. */
  readonly hidden?: readonly string[];
  readonly parts: readonly string[];
}

/** How far a record had come: how much of each list, and which conditions held. */
export interface RecordMark {
  readonly rows: number;
  readonly events: number;
  readonly actions: number;
  readonly transitions: number;
  readonly held: readonly boolean[];
}

export interface Recorder {
  readonly observe: Observer;
  /** For a record that goes on from another before anything was observed. */
  start(table: SignalTable, moment: Moment): void;
  mark(): RecordMark;
  goBackTo(mark: RecordMark, record: SessionRecord): void;
  takeRest(mark: RecordMark, record: SessionRecord): void;
  /** What is written by now; it holds until more is written. */
  soFar(): Rows & Pick<SessionRecord, 'signals'>;
  /** What was written down of the session that left `log` and stands at `lastStep`. */
  recordOf(log: SessionLog, lastStep: number, answer: Answer): SessionRecord;
}

/** A row also stands wherever a condition of `rules` comes or goes, so the score sees what the session saw. */
export function recorder(plant: Plant, rules: readonly Rule[]): Recorder {
  let events: RecordedEvent[] = [];
  let actions: RecordedAction[] = [];
  let transitions: RecordedTransition[] = [];
  let rows: RowWriter = rowWriter({ signals: [] });
  let edges: RuleEdges | null = null;
  let now: Moment | null = null;
  /** Nothing has happened since the last row. */
  let still = false;
  let signals: SessionRecord['signals'] = [];

  const start = (table: SignalTable, moment: Moment): RuleEdges => {
    signals = table.signals;
    rows = rowWriter(table);
    now = moment;
    edges = ruleEdges(rules, table);
    return edges;
  };
  const observe: Observer = ({ moment, command, edges: watched, transitions: walked, table, quiet }) => {
    const { step } = plant;
    const ruled = (edges ?? start(table, moment)).look(moment, quiet);
    const isPlain = !ruled && command === null && watched.length === 0 && moment.events.length === 0;
    if (!quiet) still = false;
    if (isPlain && step % STEPS_PER_SECOND !== 0) return;
    const row = rows.write(step, moment, still);
    still = quiet;
    if (command && command.do !== 'rewind') actions.push({ number: actions.length + 1, row, step, command });
    for (const event of moment.events) events.push({ ...event, row, step });
    for (const transition of walked) transitions.push({ ...transition, step });
  };
  return {
    observe,
    start,
    mark: () => ({
      rows: rows.count,
      events: events.length,
      actions: actions.length,
      transitions: transitions.length,
      held: edges?.held() ?? [],
    }),
    goBackTo(mark, record) {
      rows.clear();
      rows.copy(record, 0, mark.rows);
      events = record.events.slice(0, mark.events);
      actions = record.actions.slice(0, mark.actions);
      transitions = record.transitions.slice(0, mark.transitions);
      edges?.hold(mark.held);
      still = false;
    },
    takeRest(mark, record) {
      const shift = rows.count - mark.rows;
      rows.copy(record, mark.rows, record.steps.length);
      for (const event of record.events.slice(mark.events)) events.push({ ...event, row: event.row + shift });
      for (const action of record.actions.slice(mark.actions))
        actions.push({ ...action, number: actions.length + 1, row: action.row + shift });
      transitions.push(...record.transitions.slice(mark.transitions));
    },
    soFar: () => ({ signals, ...rows.seen() }),
    recordOf(log, lastStep, answer) {
      if (now !== null && rows.lastStep < lastStep) rows.write(lastStep, now, false);
      const values = rows.values();
      return {
        scenarioId: log.scenarioId,
        seed: log.seed,
        mode: log.mode,
        lastStep,
        signals,
        steps: rows.steps(),
        values,
        events,
        actions,
        transitions,
        wentBack: log.commands.filter(isRewind).length,
        measures: measure(wholeOf({ signals, values, events, answer })),
      };
    },
  };
}

interface Parts {
  readonly signals: SessionRecord['signals'];
  readonly values: Float64Array;
  readonly events: readonly RecordedEvent[];
  readonly answer: Answer;
}

function wholeOf({ signals, values, events, answer }: Parts): Whole {
  const start = values.length - signals.length;
  return {
    last(id) {
      const index = signals.findIndex((signal) => signal.id === id);
      return index < 0 ? Number.NaN : values[start + index];
    },
    lastOf: (test) =>
      signals.filter(({ id }) => test(id)).map(({ id }) => values[start + indexOfSignal({ signals }, id)]),
    events,
    rightCauses: answer.causes,
    hidden: answer.hidden ?? [],
    usefulParts: answer.parts,
  };
}
