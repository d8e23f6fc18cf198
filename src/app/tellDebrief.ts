/** The worker's debrief; with all it needs it is fetched when it is asked for. */
import { loadRefrigerant, REFRIGERANT_IDS } from '../refrigerant/fluids';
import { weigh } from '../scoring/weigh';
import type { SessionCore } from '../session/corePort';
import { isRewind } from '../session/liveLog';
import { recordOf } from '../session/recordOf';
import type { Scenario } from '../session/scenario/scenario';
import type { LivedOnce } from '../session/whatIf/livedOnce';
import { liveSession } from '../session/whatIf/openReruns';
import { toEnd } from '../session/whatIf/toEnd';
import { isToBeWeighed, makeDebrief, tellable } from './debriefOf';
import type { FromWorker } from './protocol';

/** The ghosts' cars may hold any. */
export const fetchGases = (): Promise<unknown> => Promise.all(REFRIGERANT_IDS.map(loadRefrigerant));

/**
 * At once, and again when the ghosts have weighed it; one of them may hold any refrigerant. The session lived for it is lent
 * for trying things otherwise; one that went back has to be lived without what was undone, so there is none to lend.
 */
export async function tellDebrief(
  post: (message: FromWorker) => void,
  held: SessionCore,
  scenario: Scenario,
  lend: MessagePort,
): Promise<void> {
  const log = held.log();
  const heedRun = (step: number): void => post({ type: 'ranAgain', share: step / log.lastStep });
  const once = log.commands.some(isRewind) ? null : toEnd(liveSession(scenario, log, heedRun));
  const record = once?.record ?? recordOf(scenario, log, heedRun);
  lend.postMessage(once satisfies LivedOnce | null);
  post({ type: 'debriefed', debrief: tellable(makeDebrief(scenario, held, record), held) });
  if (!isToBeWeighed(scenario, held)) return;
  await fetchGases();
  const debrief = makeDebrief(scenario, held, record, weigh(record, scenario));
  post({ type: 'weighed', debrief });
}
