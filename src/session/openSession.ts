/** A session of a shipped scenario, new or from its log. */
import { buildPlant } from '../plant/buildPlant';
import type { Mode, SessionCore, SessionLog } from './corePort';
import { plantOptions } from './scenario/plantOptions';
import type { Scenario } from './scenario/scenario';
import { type HeedRun, sessionCore } from './sessionCore';
import type { Observer } from './sessionRun';

export interface OpenOptions {
  readonly mode: Mode;
  readonly seed: number;
  /** Brings the session to where this log ends. */
  readonly log?: SessionLog;
  readonly heedRun?: HeedRun;
  readonly observe?: Observer;
}

/** Throws `OtherLogError` for a log of another engine or scenario, `BrokenLogError` for one no session can have left. */
export function openSession(scenario: Scenario, { mode, seed, ...rest }: OpenOptions): SessionCore {
  return sessionCore({
    job: scenario.job,
    mode,
    seed,
    plant: buildPlant(plantOptions(scenario.data, seed)),
    ...rest,
  });
}
