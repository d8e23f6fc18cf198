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
import type { PastMinutes } from './gaugeHistory';
import { pastMinutes } from './pastMinutes';
import type { OpenRequest } from './protocol';
import { saturationOf } from './saturationOf';

export interface OpenedCore {
  readonly scenario: Scenario;
  readonly core: SessionCore;
  readonly saturation: SaturationLine;
  readonly rubric: RubricOutline;
  /** What instruments read at the end of the log. */
  readonly past: PastMinutes;
}

/**
 * `heedShare` is told how much of a log has been run again, 0 to 1. Throws `RangeError` where there is no such scenario,
 * `OtherLogError` where its log is another one's.
 */
export async function openCore(
  { scenarioId, mode, seed, log }: OpenRequest,
  heedShare: (share: number) => void = () => undefined,
): Promise<OpenedCore> {
  const scenario = await findScenario(scenarioId);
  if (!scenario) throw new RangeError(`no scenario "${scenarioId}"`);
  await Promise.all(fluidsNeeded(scenario.data).map(loadRefrigerant));
  // an assessed session has no ghost: its frames hold no truth
  const isAlone = mode === 'assessed';
  const lives = (log?.lastStep ?? 0) * (isAlone ? 1 : 2);
  const heedRun = (step: number): void => heedShare(step / lives);
  const { past, observe } = pastMinutes(log?.lastStep ?? 0);
  const alone = openSession(scenario, { mode, seed, heedRun, ...(log ? { log, observe } : {}) });
  const core = isAlone
    ? alone
    : besideGhost(alone, plantOptions(scenario.data, seed), (step) => heedRun(alone.step + step));
  const rubric = rubricOutline(scenario.rules, scenario.weights, PASS_MARK);
  return { scenario, core, saturation: saturationOf(onBench(scenario.data)), rubric, past };
}
