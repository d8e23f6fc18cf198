/** The score of a record in its scenario; weighed with ghost cars if that is wanted and there is anything to weigh. */
import type { SessionRecord } from '../session/record/record';
import type { Scenario } from '../session/scenario/scenario';
import { type Score, score } from './score';
import { weigh } from './weigh';

export function scoreOf(record: SessionRecord, scenario: Scenario, weighed: boolean): Score {
  const filled = weighed ? (weigh(record, scenario)?.record ?? record) : record;
  return score(filled, scenario);
}
