/** What a verb was given as SCENARIO, `--seed` and `--mode`: an id that ships or a file; a whole number; a mode. */
import { readScenario } from '../scoring/readScenario';
import type { Mode } from '../session/corePort';
import { scenarioById } from '../session/scenario/library';
import { rubrics } from '../session/scenario/rubrics';
import type { Scenario } from '../session/scenario/scenario';
import { word } from '../words/words';
import type { Io } from './io';
import { UsageError } from './verb';

const MODES: readonly Mode[] = ['explore', 'practice', 'assessed'];

/** Ids have letters, figures and hyphens; a name with a dot or a slash is meant as a file. */
export const isFileName = (given: string): boolean => /[./\\]/.test(given);

/** A file is refused for what `check` finds against playing it; that its plans do not solve it is no hindrance. */
export function scenarioArgument(given: string, io: Io): Scenario {
  if (isFileName(given)) return fileArgument(given, io);
  try {
    return scenarioById(given);
  } catch (error) {
    if (error instanceof RangeError) throw new UsageError(error.message);
    throw error;
  }
}

function fileArgument(file: string, io: Io): Scenario {
  const { problems, ready } = readScenario(file, io.readFile(file), rubrics);
  if (ready) return ready.scenario;
  const errors = problems.filter(({ level }) => level === 'error');
  throw new UsageError(errors.map(({ at, code, message }) => `${at} ${code} ${message}`).join('\n'));
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
