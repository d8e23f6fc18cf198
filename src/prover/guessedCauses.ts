/**
 * Which of two hidden causes the author's own solution calls no more than likely: what no reading tells, but the car's
 * history does. None where it is sure of nothing.
 */
import { placedLines, readPlanLine } from '../session/plan/planWords';
import type { Scenario } from '../session/scenario/scenario';
import { asRead, hiddenAsRead } from './forecast/suspectsIn';

export function guessedCauses(scenario: Scenario): readonly string[] {
  const said = new Map<string, string>();
  for (const { line } of placedLines(scenario.data.plans.solution)) {
    const reading = readPlanLine(line);
    if (!('act' in reading) || reading.act.kind !== 'command') continue;
    const { command } = reading.act;
    if (command.do === 'diagnose') said.set(asRead(String(command.cause)), String(command.sure));
  }
  const hidden = hiddenAsRead(scenario);
  const guessed = hidden.filter((cause) => said.get(cause) === 'likely');
  return guessed.length < hidden.length ? guessed : [];
}
