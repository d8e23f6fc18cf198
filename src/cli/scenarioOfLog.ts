/** The scenario that a saved session was played on: the file that was given, else the one that ships under the log's id. */
import type { SessionLog } from '../session/corePort';
import { scenarioById } from '../session/scenario/library';
import type { Scenario } from '../session/scenario/scenario';
import type { Io } from './io';
import { scenarioArgument } from './scenarioArgument';
import { UsageError } from './verb';

/** Throws `UsageError`; of what the library says, as it says it. */
export function scenarioOfLog(
  { scenarioId }: Pick<SessionLog, 'scenarioId'>,
  given: string | undefined,
  io: Io,
): Scenario {
  if (given !== undefined) return scenarioArgument(given, io);
  try {
    return scenarioById(scenarioId);
  } catch (error) {
    throw new UsageError((error as Error).message);
  }
}
