/** The worker's debrief; with all it needs it is fetched when it is asked for. */
import { loadRefrigerant, REFRIGERANT_IDS } from '../refrigerant/fluids';
import { weigh } from '../scoring/weigh';
import type { SessionCore } from '../session/corePort';
import { recordOf } from '../session/recordOf';
import type { Scenario } from '../session/scenario/scenario';
import { isToBeWeighed, makeDebrief, tellable } from './debriefOf';
import type { FromWorker } from './protocol';

/** At once, and again when the ghosts have weighed it; one of them may hold any refrigerant. */
export async function tellDebrief(
  post: (message: FromWorker) => void,
  held: SessionCore,
  scenario: Scenario,
): Promise<void> {
  const log = held.log();
  const record = recordOf(scenario, log, (step) => post({ type: 'ranAgain', share: step / log.lastStep }));
  post({ type: 'debriefed', debrief: tellable(makeDebrief(scenario, held, record), held) });
  if (!isToBeWeighed(scenario, held)) return;
  await Promise.all(REFRIGERANT_IDS.map(loadRefrigerant));
  const debrief = makeDebrief(scenario, held, record, weigh(record, scenario));
  post({ type: 'weighed', debrief });
}
