/** Ids and conditions of a scenario against what the plant really has: deliveries, answer, plans. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { Plant } from '../../plant/plantPort';
import { word } from '../../words/words';
import { sessionSignals } from '../sessionSignals';
import { checkCondition } from './checkCondition';
import { checkLineIds, linesOf } from './checkPlanWords';
import type { Findings } from './findings';
import type { Sound } from './soundKeys';

export function checkDeliveries({ deliver }: ScenarioData, plant: Plant, findings: Findings): void {
  const table = { signals: [...plant.signals, ...sessionSignals(plant)] };
  const told = { code: 'SCN120' as const, tell: (reason: string) => reason };
  deliver.forEach(({ done }, at) => {
    checkCondition(done, ['deliver', at, 'done'], table, findings, told);
  });
}

export function checkAnswerIds({ answer }: ScenarioData, plant: Plant, findings: Findings): void {
  checkKnown(answer.causes, ['answer', 'causes'], plant.choices('cause'), findings);
  checkKnown(answer.parts, ['answer', 'parts'], plant.choices('replaceable'), findings);
}

export function checkPlanIds(data: ScenarioData, sound: Sound, plant: Plant, findings: Findings): void {
  for (const { line, path } of linesOf(data, sound)) checkLineIds(line, path, plant, findings);
}

function checkKnown(
  ids: readonly string[],
  path: readonly string[],
  known: readonly string[],
  findings: Findings,
): void {
  ids.forEach((id, at) => {
    if (known.includes(id)) return;
    findings.unknown([...path, at], 'SCN121', word('check.notForThisCar', { id }), id, known);
  });
}

export function checkOnce(list: readonly { readonly id: string }[], where: string, findings: Findings): void {
  const ids = list.map(({ id }) => id);
  ids.forEach((id, at) => {
    if (ids.indexOf(id) < at) findings.error([where, at, 'id'], 'SCN122', word('check.twice', { id }));
  });
}
