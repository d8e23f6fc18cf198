/** Makes the session core of a request, with the saturation line of what is in the car. */
import type { SaturationLine } from '../instruments/saturation';
import { type RubricOutline, rubricOutline } from '../panels/rubricOutline';
import { loadRefrigerant } from '../refrigerant/fluids';
import { PASS_MARK } from '../scoring/passMark';
import type { SessionCore } from '../session/corePort';
import { openSession } from '../session/openSession';
import { plantOptions } from '../session/scenario/plantOptions';
import type { Scenario } from '../session/scenario/scenario';
import { besideGhost } from '../suspects/besideGhost';
import { findScenario } from './findScenario';
import { fluidsNeeded, onBench } from './fluidsNeeded';
import type { OpenRequest } from './protocol';
import { saturationOf } from './saturationOf';

export interface OpenedCore {
  readonly scenario: Scenario;
  readonly core: SessionCore;
  readonly saturation: SaturationLine;
  readonly rubric: RubricOutline;
}

/** Throws `RangeError` where there is no such scenario, `OtherLogError` where its log is another one's. */
export async function openCore({ scenarioId, mode, seed, log }: OpenRequest): Promise<OpenedCore> {
  const scenario = await findScenario(scenarioId);
  if (!scenario) throw new RangeError(`no scenario "${scenarioId}"`);
  await Promise.all(fluidsNeeded(scenario.data).map(loadRefrigerant));
  const alone = openSession(scenario, { mode, seed, ...(log ? { log } : {}) });
  // an assessed session has no ghost: its frames hold no truth
  const core = mode === 'assessed' ? alone : besideGhost(alone, plantOptions(scenario.data, seed));
  const rubric = rubricOutline(scenario.rules, scenario.weights, PASS_MARK);
  return { scenario, core, saturation: saturationOf(onBench(scenario.data)), rubric };
}
