/**
 * What weighing would say of somebody who named nothing, or had read nothing before: none of it was proven, cheap or free
 * of noise. That needs no ghost cars; of anybody else nothing is said here.
 */

import { isWeighable } from '../../scoring/weigh';
import type { MeasureId } from '../../session/record/measures';
import type { SessionRecord } from '../../session/record/record';
import type { Scenario } from '../../session/scenario/scenario';
import { trialsOf } from '../../suspects/trials';

const NONE: Partial<Record<MeasureId, number>> = {
  'diagnosis.justified': 0,
  'diagnosis.efficient': 0,
  'diagnosis.noiseless': 0,
};

export function unreadMeasures(record: SessionRecord, scenario: Scenario): SessionRecord {
  const named = record.actions.findLast(({ command }) => command.do === 'diagnose');
  const hasRead = named !== undefined && trialsOf(record, named.number).trials.length > 0;
  if (hasRead || !isWeighable(scenario)) return record;
  return { ...record, measures: { ...record.measures, ...NONE } };
}
