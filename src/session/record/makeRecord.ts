/** Runs a log from the start and writes down what the score and the debrief need. */
import type { Rule } from '../../../shared/schema/rubric';
import type { Plant } from '../../plant/plantPort';
import type { SessionLog } from '../corePort';
import { type HeedRun, sessionCore } from '../sessionCore';
import type { SessionJob } from '../sessionRun';
import type { SessionRecord } from './record';
import { type Answer, recorder } from './recorder';

export function makeRecord(
  log: SessionLog,
  job: SessionJob,
  answer: Answer,
  plant: Plant,
  rules: readonly Rule[] = [],
  heedRun?: HeedRun,
): SessionRecord {
  const { observe, recordOf } = recorder(plant, rules);
  const core = sessionCore({ job, seed: log.seed, mode: log.mode, plant, log, heedRun, observe });
  return recordOf(log, core.step, answer);
}
