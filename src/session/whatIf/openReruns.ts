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
  /** Rows written by now, of the one that is running; they hold until it runs on. */
  soFar: Stage['writer']['soFar'];
  /** The first step after which it differs, as far as is known by now. */
  apartSoFar(): number | null;
  again(edited: readonly NumberedCommand[]): Generator<void, LivedAgain>;
}

/** `heedRun` is told each simulated minute. */
export function liveSession(
  scenario: Scenario,
  log: SessionLog,
  heedRun?: (step: number) => void,
): Generator<void, LivedOnce> {
  return liveOnce(stageOf(scenario, log), numberedCommands(log), heedRun);
}

/** `once`: the session of that log, lived here or elsewhere. */
export function rerunsOf(scenario: Scenario, log: SessionLog, once: LivedOnce): Reruns {
  const stage = stageOf(scenario, log);
  stage.writer.start(stage.run.table, stage.run.moment);
  const looking = begun(
    sessionRun(scenario.job, log.mode, buildPlant(plantOptions(scenario.data, log.seed))),
  );
  let apart: number | null = null;
  return {
    once,
    soFar: () => stage.writer.soFar(),
    apartSoFar: () => apart,
    again(edited) {
      apart = null;
      return liveAgain(stage, looking, once, edited, (step) => {
        apart = step;
      });
    },
  };
}

export function* openReruns(scenario: Scenario, log: SessionLog): Generator<void, Reruns> {
  return rerunsOf(scenario, log, yield* liveSession(scenario, log));
}

function stageOf(scenario: Scenario, log: SessionLog): Stage {
  const { job, answer, rules } = scenario;
  const plant = buildPlant(plantOptions(scenario.data, log.seed));
  const writer = recorder(plant, rules);
  const run = begun(sessionRun(job, log.mode, plant, writer.observe));
  const recordOf: Stage['recordOf'] = (commands, lastStep) =>
    writer.recordOf({ ...log, commands, lastStep }, lastStep, answer);
  return { run, writer, job, log, recordOf };
}

function begun(run: SessionRun): SessionRun {
  run.hear({ type: 'plantBuilt' });
  return run;
}
