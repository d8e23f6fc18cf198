/** A scenario told in another language, checked against the scenario: the same keys, as many lines, the same figures. */
import type { Problem } from '../../shared/schema/problem';
import { problemOfYaml } from '../../shared/schema/problemOfYaml';
import { shapeProblems } from '../../shared/schema/problems';
import { readYaml, YamlError } from '../../shared/schema/readYaml';
import { type ScenarioData, scenarioSchema } from '../../shared/schema/scenario';
import { scenarioWordsProblems } from '../../shared/schema/scenarioWords';

/** Nothing where the scenario itself has not the form of one: that is told of it first. */
export function checkTranslation(file: string, text: string, scenarioText: string): Problem[] {
  try {
    const scenario = readYaml(file, scenarioText);
    if (shapeProblems(scenario, scenarioSchema).length > 0) return [];
    return scenarioWordsProblems(readYaml(file, text), scenario.data as ScenarioData);
  } catch (error) {
    if (!(error instanceof YamlError)) throw error;
    return [problemOfYaml(error)];
  }
}
