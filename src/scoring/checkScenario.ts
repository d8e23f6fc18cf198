/**
 * The whole check of a scenario file: form, ids, rules, then its own plans played, then what a teacher would miss. Stops
 * at the first stage that finds errors, because the next one would only repeat them in other words.
 */
import type { Problem } from '../../shared/schema/problems';
import { shapeProblems } from '../../shared/schema/problems';
import { readYaml, YamlError, type YamlSource } from '../../shared/schema/readYaml';
import type { Rubric } from '../../shared/schema/rubric';
import { type ScenarioData, scenarioSchema } from '../../shared/schema/scenario';
import { buildPlant } from '../plant/buildPlant';
import type { Plant } from '../plant/plantPort';
import { checkBentSigns } from '../session/check/checkBentSigns';
import { checkIds } from '../session/check/checkIds';
import { checkPhysics } from '../session/check/checkPhysics';
import { checkTeaching } from '../session/check/checkTeaching';
import { type Findings, findingsIn } from '../session/check/findings';
import { plantOptions } from '../session/scenario/plantOptions';
import { type Scenario, scenarioOf } from '../session/scenario/scenario';
import { checkPlans } from './checkPlans';
import { checkRules } from './checkRules';

const FIRST_SEED = 1;

export function checkScenario(file: string, text: string, rubrics: ReadonlyMap<string, Rubric>): Problem[] {
  const read = sourceOf(file, text);
  if (!('source' in read)) return [read];
  const { source } = read;
  const form = shapeProblems(source, scenarioSchema);
  if (form.length > 0) return form;
  const data = source.data as ScenarioData;
  const findings = findingsIn(source);
  const built = build(data, rubrics, findings);
  if (built) {
    checkIds(data, built.plant, findings);
    checkRules(built.scenario, built.plant, findings);
    checkBentSigns(data, built.scenario.rules, findings);
  }
  const hasErrors = (): boolean => findings.list.some(({ level }) => level === 'error');
  if (built && !hasErrors()) {
    checkPhysics(data, built.plant, findings);
    checkPlans(built.scenario, findings);
  }
  checkTeaching(data, findings);
  return [...findings.list];
}

function sourceOf(file: string, text: string): { readonly source: YamlSource } | Problem {
  try {
    return { source: readYaml(file, text) };
  } catch (error) {
    if (!(error instanceof YamlError)) throw error;
    return { at: error.place, code: error.code, level: 'error', message: error.text };
  }
}

function build(data: ScenarioData, rubrics: ReadonlyMap<string, Rubric>, findings: Findings) {
  let scenario: Scenario;
  try {
    scenario = scenarioOf(data, rubrics);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    findings.error(['rubric'], 'SCN101', error.message);
    return null;
  }
  let plant: Plant;
  try {
    plant = buildPlant(plantOptions(data, FIRST_SEED));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const path = /fault|^no part/.test(error.message) ? ['faults'] : ['vehicle'];
    findings.error(path, 'SCN102', error.message);
    return null;
  }
  return { scenario, plant };
}
