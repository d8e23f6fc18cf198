/**
 * Plays what worked on another lesson of the same car, line by line: what is refused is passed over, and when the time is
 * up the car is left as it has to be.
 */
import { keyedUniform } from '../../../numerics/keyedRandom';
import { STEPS_PER_SECOND } from '../../../session/clock';
import { readPlanLine, singleLines } from '../../../session/plan/planWords';
import type { Scenario } from '../../../session/scenario/scenario';
import { leave } from '../leave';
import type { TidyHands } from '../tidyHands';

export function anotherSolution(hands: TidyHands, others: readonly Scenario[]): void {
  const { core, seed, scenario } = hands;
  const strange = others.filter(({ data }) => data.id !== scenario.data.id);
  const alike = strange.filter(({ data }) => data.vehicle === scenario.data.vehicle);
  const from = alike.length > 0 ? alike : strange;
  if (from.length === 0) return;
  const chosen = from[Math.floor(from.length * keyedUniform(seed, 'solution', scenario.data.id, 0))];
  for (const line of singleLines(chosen.data.plans.solution)) {
    const reading = readPlanLine(line);
    if ('problem' in reading) continue;
    if (reading.act.kind === 'command') core.send(reading.act.command);
    else
      for (let time = 0; time < reading.act.times; time++) hands.wait(reading.act.steps / STEPS_PER_SECOND);
    if (hands.isLate()) break;
  }
  if (core.view().phase === 'work') leave(hands, { charges: true, refers: false, remains: false });
}
