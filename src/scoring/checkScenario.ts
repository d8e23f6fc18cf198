/** The whole check of a scenario file: what it takes to be played, then its own plans played, then what a teacher would miss. */
import type { Problem } from '../../shared/schema/problem';
import type { Rubric } from '../../shared/schema/rubric';
import { checkPhysics } from '../session/check/checkPhysics';
import { checkTeaching } from '../session/check/checkTeaching';
import { checkPlans } from './checkPlans';
import { readScenario } from './readScenario';

export function checkScenario(file: string, text: string, rubrics: ReadonlyMap<string, Rubric>): Problem[] {
  const { problems, formed, ready } = readScenario(file, text, rubrics);
  if (!formed) return [...problems];
  const { data, findings } = formed;
  if (ready) {
    checkPhysics(data, ready.plant, findings);
    checkPlans(ready.scenario, findings);
  }
  checkTeaching(data, findings);
  return [...findings.list];
}
