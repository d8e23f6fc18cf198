/**
 * A scenario file as far as it has to be right to be played: form, bench, hidden faults, ids, rules. Stops at the first
 * stage that finds errors, because the next one would only repeat them in other words.
 */
import type { Problem } from '../../shared/schema/problem';
import { problemOfYaml } from '../../shared/schema/problemOfYaml';
import { shapeProblems } from '../../shared/schema/problems';
import { readYaml, YamlError, type YamlSource } from '../../shared/schema/readYaml';
import type { Rubric } from '../../shared/schema/rubric';
import { type ScenarioData, scenarioSchema } from '../../shared/schema/scenario';
import { hoseSpecs } from '../equipment/hoses';
import { DEVICE_IDS } from '../equipment/tools';
import { purely } from '../faults/fault';
import { leakPlaces } from '../faults/leakPlaces';
import { layoutOf } from '../layout/layouts';
import { createCar } from '../loop/car/createCar';
import { vehicleIds, vehicleOf } from '../loop/car/vehicles';
import { buildPlant } from '../plant/buildPlant';
import type { Plant } from '../plant/plantPort';
import { checkAnswer } from '../session/check/checkAnswer';
import { checkBench } from '../session/check/checkBench';
import { checkBentSigns } from '../session/check/checkBentSigns';
import { checkFaults } from '../session/check/checkFaults';
import { checkFound } from '../session/check/checkFound';
import { checkIds } from '../session/check/checkIds';
import { type Findings, findingsIn } from '../session/check/findings';
import { plantOptions } from '../session/scenario/plantOptions';
import { type Scenario, scenarioOf } from '../session/scenario/scenario';
import { word } from '../words/words';
import { checkRules } from './checkRules';

const FIRST_SEED = 1;

export interface ReadScenario {
  readonly problems: readonly Problem[];
  /** Where the form is right; more may be found. */
  readonly formed?: { readonly data: ScenarioData; readonly findings: Findings };
  /** Where nothing stands against playing it. */
  readonly ready?: { readonly scenario: Scenario; readonly plant: Plant };
}

export function readScenario(file: string, text: string, rubrics: ReadonlyMap<string, Rubric>): ReadScenario {
  const read = sourceOf(file, text);
  if (!('source' in read)) return { problems: [read] };
  const { source } = read;
  const form = shapeProblems(source, scenarioSchema);
  if (form.length > 0) return { problems: form };
  const data = source.data as ScenarioData;
  const findings = findingsIn(source);
  const formed = { data, findings };
  const scenario = scenarioIn(data, rubrics, findings);
  checkCarAndBench(data, findings);
  if (!scenario || findings.list.length > 0) return { problems: findings.list, formed };
  const plant = buildPlant(plantOptions(data, FIRST_SEED));
  checkIds(data, plant, findings);
  checkRules(scenario, plant, findings);
  checkBentSigns(data, scenario.rules, findings);
  checkAnswer(data, findings);
  const hasErrors = findings.list.some(({ level }) => level === 'error');
  return { problems: findings.list, formed, ...(hasErrors ? {} : { ready: { scenario, plant } }) };
}

function sourceOf(file: string, text: string): { readonly source: YamlSource } | Problem {
  try {
    return { source: readYaml(file, text) };
  } catch (error) {
    if (!(error instanceof YamlError)) throw error;
    return problemOfYaml(error);
  }
}

function scenarioIn(
  data: ScenarioData,
  rubrics: ReadonlyMap<string, Rubric>,
  findings: Findings,
): Scenario | null {
  try {
    return scenarioOf(data, rubrics);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    findings.error(['rubric'], 'SCN101', error.message);
    return null;
  }
}

function checkCarAndBench(data: ScenarioData, findings: Findings): void {
  const id = data.vehicle;
  if (!vehicleIds.includes(id)) {
    findings.unknown(['vehicle'], 'SCN102', word('check.noVehicle', { id }), id, vehicleIds);
    return;
  }
  const vehicle = vehicleOf(id);
  const { refrigerant, charge } = vehicle.label;
  const rest = { ambientK: 293.15, relativeHumidity: 0.5, stood: 'equalised' } as const;
  const car = createCar(vehicle, { ...purely(refrigerant, charge), ...rest });
  const ports = car.vehicle.ports.map((port) => port.id);
  checkBench(data, [...Object.keys(hoseSpecs), ...DEVICE_IDS, ...ports], findings);
  checkFound(data, layoutOf(id), findings);
  checkFaults(data, leakPlaces(car), findings);
}
