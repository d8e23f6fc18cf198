/** Runs a log from the start and writes down what the score and the debrief need. */
import type { Rule } from '../../../shared/schema/rubric';
import type { Plant } from '../../plant/plantPort';
import { STEPS_PER_SECOND } from '../clock';
import type { Moment } from '../conditions/moment';
import type { SessionLog } from '../corePort';
import { isRewind } from '../liveLog';
import { sessionCore } from '../sessionCore';
import type { Observer, SessionJob } from '../sessionRun';
import { measure, type Whole } from './measures';
import {
  indexOfSignal,
  type RecordedAction,
  type RecordedEvent,
  type RecordedTransition,
  type SessionRecord,
} from './record';
import { type RowWriter, rowWriter } from './rowWriter';
import { type RuleEdges, ruleEdges } from './ruleEdges';

/** What is right in this scenario: needed to measure, never shown before the debrief. */
export interface Answer {
  readonly causes: readonly string[];
  /** Faults that are in the car, each once; none where nothing is said. */
  readonly hidden?: readonly string[];
  readonly parts: readonly string[];
}

/** A row also stands wherever a condition of `rules` comes or goes, so the score sees what the session saw. */
export function makeRecord(
  log: SessionLog,
  job: SessionJob,
  answer: Answer,
  plant: Plant,
  rules: readonly Rule[] = [],
): SessionRecord {
  const { observe, recordOf } = recorder(plant, rules);
  const core = sessionCore({ job, seed: log.seed, mode: log.mode, plant, log, observe });
  return recordOf(log, core.step, answer);
}

/** Writes down a session while it runs; one that went back has to be run again from its log. */
export interface Recorder {
  readonly observe: Observer;
  /** What was written down of the session that left `log` and stands at `lastStep`. */
  recordOf(log: SessionLog, lastStep: number, answer: Answer): SessionRecord;
}

export function recorder(plant: Plant, rules: readonly Rule[]): Recorder {
  const events: RecordedEvent[] = [];
  const actions: RecordedAction[] = [];
  const transitions: RecordedTransition[] = [];
  let rows: RowWriter | null = null;
  let now: Moment | null = null;
  let edgeIn: RuleEdges = () => false;
  let signals: SessionRecord['signals'] = [];
  const observe: Observer = ({ moment, command, edges, transitions: walked, table }) => {
    if (rows === null) {
      signals = table.signals;
      rows = rowWriter(signals.length);
      now = moment;
      edgeIn = ruleEdges(rules, table);
    }
    const { step } = plant;
    const ruled = edgeIn(moment);
    const quiet = !ruled && command === null && edges.length === 0 && moment.events.length === 0;
    if (quiet && step % STEPS_PER_SECOND !== 0) return;
    const row = rows.write(step, moment);
    if (command && command.do !== 'rewind') actions.push({ number: actions.length + 1, row, step, command });
    for (const event of moment.events) events.push({ ...event, row, step });
    for (const transition of walked) transitions.push({ ...transition, step });
  };
  return {
    observe,
    recordOf(log, lastStep, answer) {
      const written: RowWriter = rows ?? rowWriter(0);
      if (now !== null && written.lastStep < lastStep) written.write(lastStep, now);
      const values = written.values();
      return {
        scenarioId: log.scenarioId,
        seed: log.seed,
        mode: log.mode,
        lastStep,
        signals,
        steps: written.steps(),
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
