/**
 * A scenario file as far as it has to be right to be played: form, bench, hidden faults, ids, rules. What is wrong with one
 * key does not keep the others from being looked at: each check says which keys it goes by, and runs where these are sound.
 */
import type { Problem } from '../../shared/schema/problem';
import { problemOfYaml } from '../../shared/schema/problemOfYaml';
import { shapeProblems } from '../../shared/schema/problems';
import { parseYaml } from '../../shared/schema/readYaml';
import type { Rubric } from '../../shared/schema/rubric';
import { type ScenarioData, scenarioSchema } from '../../shared/schema/scenario';
import { hoseSpecs } from '../equipment/hoses';
import { DEVICE_IDS } from '../equipment/tools';
import { layoutOf } from '../layout/layouts';
import { vehicleIds, vehicleOf } from '../loop/car/vehicles';
import type { Plant } from '../plant/plantPort';
import { checkAnswer, checkAnswerParts } from '../session/check/checkAnswer';
import { checkBench } from '../session/check/checkBench';
import { checkBentSigns } from '../session/check/checkBentSigns';
import { checkFaults } from '../session/check/checkFaults';
import { checkFound } from '../session/check/checkFound';
import { checkAnswerIds, checkDeliveries, checkOnce, checkPlanIds } from '../session/check/checkIds';
import { checkPlanWords } from '../session/check/checkPlanWords';
import { checkTexts } from '../session/check/checkTexts';
import { checkVaries } from '../session/check/checkVaries';
import { type Findings, findingsIn } from '../session/check/findings';
import { placesOfCar } from '../session/check/placesOfCar';
import { type Sound, soundOf } from '../session/check/soundKeys';
import { standingPlant } from '../session/check/standingPlant';
import { plantOptions } from '../session/scenario/plantOptions';
import { rulesOf, type Scenario, scenarioOf } from '../session/scenario/scenario';
import { word } from '../words/words';
import { checkRubric } from './checkRubric';
import { checkRules } from './checkRules';

const FIRST_SEED = 1;
/** What the plant is built from. */
const OF_THE_PLANT = [
  'vehicle',
  'weather',
  'contents',
  'faults',
  'found',
  'place',
  'papers',
  'bench',
  'varies',
] as const;

export interface ReadScenario {
  readonly problems: readonly Problem[];
  /** Where the form is right; more may be found. */
  readonly formed?: { readonly data: ScenarioData; readonly findings: Findings };
  /** Where nothing stands against playing it. */
  readonly ready?: { readonly scenario: Scenario; readonly plant: Plant };
}

export function readScenario(file: string, text: string, rubrics: ReadonlyMap<string, Rubric>): ReadScenario {
  const { source, errors } = parseYaml(file, text);
  const unread = errors.map(problemOfYaml);
  if (source === null) return { problems: unread };
  const form = [...unread, ...shapeProblems(source, scenarioSchema)];
  const data = source.data as ScenarioData;
  const findings = findingsIn(source);
  const sound = soundOf(source.data, form, findings);
  checkTexts(source.data, findings);
  checkByKeys(data, sound, rubrics, findings);
  const plant = sound(...OF_THE_PLANT) ? standingPlant(plantOptions(data, FIRST_SEED)) : null;
  if (plant) checkByPlant(data, plant, sound, rubrics, findings);
  const problems = inOrder([...form, ...findings.list]);
  if (form.length > 0) return { problems };
  const isRight = plant !== null && problems.every(({ level }) => level !== 'error');
  const ready = isRight ? { ready: { scenario: scenarioOf(data, rubrics), plant } } : {};
  return { problems, formed: { data, findings }, ...ready };
}

/** As they stand in the file. */
const inOrder = (problems: readonly Problem[]): Problem[] =>
  [...problems].sort((a, b) => a.line - b.line || a.column - b.column);

/** What can be known without a car on the ramp. */
function checkByKeys(
  data: ScenarioData,
  sound: Sound,
  rubrics: ReadonlyMap<string, Rubric>,
  findings: Findings,
): void {
  if (sound('rubric')) checkRubric(data, rubrics, findings);
  for (const list of ['papers', 'deliver'] as const) if (sound(list)) checkOnce(data[list], list, findings);
  if (sound('varies', 'weather')) checkVaries(data, findings);
  checkPlanWords(data, sound, findings);
  if (!sound('vehicle')) return;
  const id = data.vehicle;
  if (!vehicleIds.includes(id)) {
    findings.unknown(['vehicle'], 'SCN102', word('check.noVehicle', { id }), id, vehicleIds);
    return;
  }
  const ports = vehicleOf(id).ports.map((port) => port.id);
  if (sound('bench')) checkBench(data, [...Object.keys(hoseSpecs), ...DEVICE_IDS, ...ports], findings);
  if (sound('found')) checkFound(data, layoutOf(id), findings);
  if (sound('faults', 'contents')) checkFaults(data, placesOfCar(id), findings);
}

function checkByPlant(
  data: ScenarioData,
  plant: Plant,
  sound: Sound,
  rubrics: ReadonlyMap<string, Rubric>,
  findings: Findings,
): void {
  if (sound('deliver')) checkDeliveries(data, plant, findings);
  checkPlanIds(data, sound, plant, findings);
  if (sound('answer')) {
    checkAnswerIds(data, plant, findings);
    checkAnswer(data, findings);
    if (sound('faults'))
      checkAnswerParts(data, layoutOf(data.vehicle), plant.choices('replaceable'), findings);
  }
  if (!sound('rubric')) return;
  const rules = rulesOf(data, rubrics);
  checkRules({ rules, data }, plant, findings);
  checkBentSigns(data, rules, findings);
}
