/** The record of a session that was played: its log run again from the start. */
import { buildPlant } from '../plant/buildPlant';
import type { SessionLog } from './corePort';
import { makeRecord } from './record/makeRecord';
import type { SessionRecord } from './record/record';
import { plantOptions } from './scenario/plantOptions';
import type { Scenario } from './scenario/scenario';
import type { HeedRun } from './sessionCore';

export function recordOf(scenario: Scenario, log: SessionLog, heedRun?: HeedRun): SessionRecord {
  const plant = buildPlant(plantOptions(scenario.data, log.seed));
  return makeRecord(log, scenario.job, scenario.answer, plant, scenario.rules, heedRun);
}
