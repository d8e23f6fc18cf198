/** What a verb was given as SCENARIO, `--seed` and `--mode`: an id that ships or a file; a whole number; a mode. */

import { checkedData } from '../../shared/schema/problems';
import { readYaml, YamlError } from '../../shared/schema/readYaml';
import { type ScenarioData, scenarioSchema } from '../../shared/schema/scenario';
import type { Mode } from '../session/corePort';
import { rubrics, scenarioById } from '../session/scenario/library';
import { type Scenario, scenarioOf } from '../session/scenario/scenario';
import { word } from '../words/words';
import type { Io } from './io';
import { UsageError } from './verb';

const MODES: readonly Mode[] = ['explore', 'practice', 'assessed'];

export function scenarioArgument(given: string, io: Io): Scenario {
  try {
    if (!/\.ya?ml$/.test(given)) return scenarioById(given);
    const source = readYaml(given, io.readFile(given));
    return scenarioOf(checkedData(source, scenarioSchema) as ScenarioData, rubrics);
  } catch (error) {
    if (error instanceof RangeError || error instanceof YamlError) throw new UsageError(error.message);
    throw error;
  }
}

export function seedOption(given: string | undefined): number {
  const seed = Number(given ?? 1);
  if (!Number.isSafeInteger(seed)) throw new UsageError(word('verbs.play.notSeed', { given: String(given) }));
  return seed;
}

export function modeOption(given: string | undefined, otherwise: Mode, modes: readonly Mode[] = MODES): Mode {
  const mode = modes.find((known) => known === (given ?? otherwise));
  if (mode) return mode;
  throw new UsageError(word('verbs.play.notMode', { given: String(given), known: modes.join(', ') }));
}
