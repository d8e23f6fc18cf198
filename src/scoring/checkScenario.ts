/**
 * The whole check of a scenario file: what it takes to be played, then its own plans played, then what a teacher would
 * miss. What was measured is told as `write` has it.
 */
import type { Problem } from '../../shared/schema/problem';
import type { Rubric } from '../../shared/schema/rubric';
import { checkPhysics } from '../session/check/checkPhysics';
import { checkTeaching } from '../session/check/checkTeaching';
import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { checkPlans } from './checkPlans';
import { readScenario } from './readScenario';

/** What is being done, for whoever waits: the car run with and without its faults, then each of its plans. */
export type CheckStage = 'physics' | 'solution' | 'careless' | 'nothing';

export function checkScenario(
  file: string,
  text: string,
  rubrics: ReadonlyMap<string, Rubric>,
  onStage: (stage: CheckStage) => void = () => undefined,
  write: WriteQuantity = writeMetric,
): Problem[] {
  const { problems, formed, ready } = readScenario(file, text, rubrics);
  if (!formed) return [...problems];
  const { data, findings } = formed;
  if (ready) {
    onStage('physics');
    checkPhysics(data, ready.plant, findings, write);
    checkPlans(ready.scenario, findings, onStage, write);
  }
  checkTeaching(data, findings);
  return [...problems.filter((problem) => !findings.list.includes(problem)), ...findings.list];
}
