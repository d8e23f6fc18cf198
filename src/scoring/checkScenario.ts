/** The whole check of a scenario file: what it takes to be played, then its own plans played, then what a teacher would miss. */
import type { Problem } from '../../shared/schema/problem';
import type { Rubric } from '../../shared/schema/rubric';
import { checkPhysics } from '../session/check/checkPhysics';
import { checkTeaching } from '../session/check/checkTeaching';
import { checkPlans } from './checkPlans';
import { readScenario } from './readScenario';

/** What is being done, for whoever waits: the car run with and without its faults, then each of its plans. */
export type CheckStage = 'physics' | 'solution' | 'careless' | 'nothing';

export function checkScenario(
  file: string,
  text: string,
  rubrics: ReadonlyMap<string, Rubric>,
  onStage: (stage: CheckStage) => void = () => undefined,
): Problem[] {
  const { problems, formed, ready } = readScenario(file, text, rubrics);
  if (!formed) return [...problems];
  const { data, findings } = formed;
  if (ready) {
    onStage('physics');
    checkPhysics(data, ready.plant, findings);
    checkPlans(ready.scenario, findings, onStage);
  }
  checkTeaching(data, findings);
  return [...problems.filter((problem) => !findings.list.includes(problem)), ...findings.list];
}
