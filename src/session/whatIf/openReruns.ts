/** A finished session made ready for trying things otherwise: lived once more with checkpoints, then again for each of them. */
import { buildPlant } from '../../plant/buildPlant';
import type { SessionLog } from '../corePort';
import { recorder } from '../record/recorder';
import { plantOptions } from '../scenario/plantOptions';
import type { Scenario } from '../scenario/scenario';
import { type SessionRun, sessionRun } from '../sessionRun';
import { type NumberedCommand, numberedCommands } from './editLog';
import { type LivedAgain, liveAgain } from './liveAgain';
import { type LivedOnce, liveOnce, type Stage } from './livedOnce';

export interface Reruns {
  readonly once: LivedOnce;
  /** Rows written by now, of the one that is running. */
  soFar: Stage['writer']['soFar'];
  /** The first step after which it differs, as far as is known by now. */
  apartSoFar(): number | null;
  again(edited: readonly NumberedCommand[]): Generator<void, LivedAgain>;
}

export function* openReruns(scenario: Scenario, log: SessionLog): Generator<void, Reruns> {
  const { job, answer, rules } = scenario;
  const { mode, seed } = log;
  const plants = [0, 1].map(() => buildPlant(plantOptions(scenario.data, seed)));
  const writer = recorder(plants[0], rules);
  const begun = (run: SessionRun): SessionRun => {
    run.hear({ type: 'plantBuilt' });
    return run;
  };
  const run = begun(sessionRun(job, mode, plants[0], writer.observe));
  const looking = begun(sessionRun(job, mode, plants[1]));
  const recordOf: Stage['recordOf'] = (commands, lastStep) =>
    writer.recordOf({ ...log, commands, lastStep }, lastStep, answer);
  const stage: Stage = { run, writer, job, log, recordOf };
  const once = yield* liveOnce(stage, numberedCommands(log));
  let apart: number | null = null;
  return {
    once,
    soFar: () => writer.soFar(),
    apartSoFar: () => apart,
    again(edited) {
      apart = null;
      return liveAgain(stage, looking, once, edited, (step) => {
        apart = step;
      });
    },
  };
}
