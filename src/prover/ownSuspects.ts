/**
 * What is wrong with the scenario's own car, as suspects are called: a leak that only a search finds reads as a loop that is
 * short; what is hidden twice is one suspect.
 */
import { NOTHING_WRONG } from '../plant/faultBook';
import type { Scenario } from '../session/scenario/scenario';
import { isFoundBySearch } from '../suspects/proven';

const SHORT = 'low-charge';

export function ownSuspects({ data, answer }: Scenario): readonly string[] {
  const hidden = data.faults.map(({ fault }) => fault);
  const causes = hidden.length > 0 ? hidden : answer.causes;
  const read = causes.map((cause) => (isFoundBySearch(cause) ? SHORT : cause));
  return read.length > 0 ? [...new Set(read)] : [NOTHING_WRONG];
}
