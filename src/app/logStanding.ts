/** Can a kept session be played on here? Same engine and same scenario; anything else is only shown with its score. */
import type { SessionLog } from '../session/corePort';
import { engineHash } from '../session/engineHash';
import { OtherLogError, refuseOther } from '../session/logProblem';
import { findScenario } from './findScenario';

export type Other = 'engine' | 'scenario' | null;

/** Which of the two is another one, or null; `id` is the scenario's on the page. A scenario that does not ship any more is another one. */
export async function standingOf(log: SessionLog, id: string): Promise<Other> {
  const scenarioHash = (await findScenario(id))?.hash ?? '';
  try {
    refuseOther(log, { engineHash, scenarioHash });
    return null;
  } catch (error) {
    if (error instanceof OtherLogError) return error.other;
    throw error;
  }
}
