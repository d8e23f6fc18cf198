/** What a verb was given as `--plan`: one of the scenario's own, or a file. */
import { type PlanLine, planFileSchema } from '../../shared/schema/plan';
import { checkedData } from '../../shared/schema/problems';
import { readYaml, YamlError } from '../../shared/schema/readYaml';
import type { Scenario } from '../session/scenario/scenario';
import type { Io } from './io';
import { UsageError } from './verb';

export function planArgument(scenario: Scenario, given: string, io: Io): readonly PlanLine[] {
  const { plans } = scenario.data;
  if (given === 'solution' || given === 'careless' || given === 'nothing') return plans[given];
  try {
    const source = readYaml(given, io.readFile(given));
    return (checkedData(source, planFileSchema) as { readonly lines: readonly PlanLine[] }).lines;
  } catch (error) {
    if (error instanceof YamlError) throw new UsageError(error.message);
    throw error;
  }
}
