/** A session of a shipped scenario, new or from its log; and the record of one that was played. */
import { buildPlant } from '../plant/buildPlant';
import type { Mode, SessionCore, SessionLog } from './corePort';
import { isRewind } from './liveLog';
import { makeRecord } from './record/makeRecord';
import type { SessionRecord } from './record/record';
import { recorder } from './record/recorder';
import { plantOptions } from './scenario/plantOptions';
import type { Scenario } from './scenario/scenario';
import { sessionCore } from './sessionCore';
import type { Observer } from './sessionRun';

export interface OpenOptions {
  readonly mode: Mode;
  readonly seed: number;
  /** Brings the session to where this log ends. */
  readonly log?: SessionLog;
  readonly observe?: Observer;
}

/** Throws `OtherLogError` for a log of another engine or scenario, `BrokenLogError` for one no session can have left. */
export function openSession(scenario: Scenario, { mode, seed, log, observe }: OpenOptions): SessionCore {
  return sessionCore({
    job: scenario.job,
    mode,
    seed,
    plant: buildPlant(plantOptions(scenario.data, seed)),
    ...(log ? { log } : {}),
    ...(observe ? { observe } : {}),
  });
}

/** Runs the log again from the start. */
export function recordOf(scenario: Scenario, log: SessionLog): SessionRecord {
  const plant = buildPlant(plantOptions(scenario.data, log.seed));
  return makeRecord(log, scenario.job, scenario.answer, plant, scenario.rules);
}

export interface RecordedSession {
  readonly core: SessionCore;
  /** The record of all that was played so far; of a session that went back it costs running the log again. */
  record(): SessionRecord;
}

/** A new session that is written down while it is played, so that its record costs no second run. */
export function openRecorded(scenario: Scenario, mode: Mode, seed: number): RecordedSession {
  const plant = buildPlant(plantOptions(scenario.data, seed));
  const { observe, recordOf: written } = recorder(plant, scenario.rules);
  const core = sessionCore({ job: scenario.job, mode, seed, plant, observe });
  return {
    core,
    record() {
      const log = core.log();
      return log.commands.some(isRewind) ? recordOf(scenario, log) : written(log, core.step, scenario.answer);
    },
  };
}
