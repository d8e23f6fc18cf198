/**
 * What is wrong with the scenario's own car, as suspects are called: a leak that only a search finds reads as a loop that is
 * short; two that are hidden are one suspect.
 */
import { NOTHING_WRONG } from '../plant/faultBook';
import type { Scenario } from '../session/scenario/scenario';
import { suspectOf } from '../suspects/causes';
import { hiddenAsRead } from './forecast/suspectsIn';

export function ownSuspects(scenario: Scenario): readonly string[] {
  const hidden = hiddenAsRead(scenario);
  return hidden.length > 0 ? [suspectOf(hidden)] : [NOTHING_WRONG];
}
