/** Ids and conditions of a scenario against what the plant really has: deliveries, answer, papers, plans. */
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { Plant } from '../../plant/plantPort';
import { word } from '../../words/words';
import { sessionSignals } from '../sessionSignals';
import { checkCondition } from './checkCondition';
import { checkPlanWords } from './checkPlanWords';
import type { Findings } from './findings';

const PLANS = ['solution', 'careless', 'nothing'] as const;

export function checkIds(data: ScenarioData, plant: Plant, findings: Findings): void {
  const table = { signals: [...plant.signals, ...sessionSignals(plant)] };
  data.deliver.forEach(({ done }, at) => {
    const told = { code: 'SCN120', tell: (reason: string) => reason };
    checkCondition(done, ['deliver', at, 'done'], table, findings, told);
  });
  checkKnown(data.answer.causes, ['answer', 'causes'], plant.choices('cause'), findings);
  checkKnown(data.answer.parts, ['answer', 'parts'], plant.choices('replaceable'), findings);
  checkOnce(
    data.papers.map(({ id }) => id),
    'papers',
    findings,
  );
  checkOnce(
    data.deliver.map(({ id }) => id),
    'deliver',
    findings,
  );
  for (const plan of PLANS) checkPlanWords(data.plans[plan], ['plans', plan], plant, findings);
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

function checkOnce(ids: readonly string[], where: string, findings: Findings): void {
  ids.forEach((id, at) => {
    if (ids.indexOf(id) < at)
      findings.error([...where.split('.'), at, 'id'], 'SCN122', word('check.twice', { id }));
  });
}
