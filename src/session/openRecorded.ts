/** A session that is written down while it is played, so that its record costs no second run. */
import { buildPlant } from '../plant/buildPlant';
import type { Mode, SessionCore } from './corePort';
import { isRewind } from './liveLog';
import type { SessionRecord } from './record/record';
import { recorder } from './record/recorder';
import { recordOf } from './recordOf';
import { plantOptions } from './scenario/plantOptions';
import type { Scenario } from './scenario/scenario';
import { sessionCore } from './sessionCore';

export interface RecordedSession {
  readonly core: SessionCore;
  /** The record of all that was played so far; of a session that went back it costs running the log again. */
  record(): SessionRecord;
}

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
