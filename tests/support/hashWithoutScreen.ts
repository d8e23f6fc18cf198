import { openSession } from '../../src/session/openSession';
import { playPlan } from '../../src/session/plan/playPlan';
import { scenarioById } from '../../src/session/scenario/library';

/** Log hash of a plan of a shipped scenario, played without a screen, assessed, on bay 1. */
export function hashWithoutScreen(scenarioId: string, plan: 'solution' | 'careless' | 'nothing'): string {
  const scenario = scenarioById(scenarioId);
  const core = openSession(scenario, { mode: 'assessed', seed: 1 });
  playPlan(core, scenario.data.plans[plan]);
  return core.logHash();
}
