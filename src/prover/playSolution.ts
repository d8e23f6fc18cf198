/** The author's solution, played as `check` plays it: assessed, and scored out of its own record. */
import { score } from '../scoring/score';
import { openRecorded } from '../session/openRecorded';
import { playPlan } from '../session/plan/playPlan';
import type { Scenario } from '../session/scenario/scenario';
import type { Outcome } from './outcome';

export function playSolution(scenario: Scenario, seed: number): Outcome {
  const { core, record } = openRecorded(scenario, 'assessed', seed);
  playPlan(core, scenario.data.plans.solution);
  const { score: points, reported, passed, critical } = score(record(), scenario);
  return { player: 'solution', seed, score: points, reported, passed, critical, steps: core.step };
}
