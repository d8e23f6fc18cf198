/**
 * A finished session lived once more from its log, with its record and with checkpoints on the way: every half minute and
 * before the actions of a step, five seconds apart at least, so that half an hour has 360 at most. From one of them it can
 * be lived on otherwise. All of it is plain data, so it can be handed to another thread.
 */
import { STEPS_PER_MINUTE, STEPS_PER_SECOND } from '../clock';
import type { LoggedCommand, SessionLog } from '../corePort';
import type { SessionRecord } from '../record/record';
import type { Recorder, RecordMark } from '../record/recorder';
import type { RunSnapshot, SessionJob, SessionRun } from '../sessionRun';
import type { NumberedCommand } from './editLog';
import { playEntries } from './playEntries';

export interface Checkpoint {
  readonly step: number;
  /** How many entries, and how many commands that were done, came before it. */
  readonly entries: number;
  readonly performed: number;
  readonly run: RunSnapshot;
  readonly mark: RecordMark;
}

export interface LivedOnce {
  readonly entries: readonly NumberedCommand[];
  readonly performed: readonly LoggedCommand[];
  readonly checkpoints: readonly Checkpoint[];
  /** Hash of the state at each second, the first at second 1; before the commands of its step. */
  readonly secondHashes: readonly string[];
  readonly record: SessionRecord;
  readonly stateHash: string;
  readonly lastStep: number;
}

export interface Stage {
  readonly run: SessionRun;
  readonly writer: Recorder;
  readonly job: SessionJob;
  readonly log: SessionLog;
  /** Makes the record of what was done. */
  readonly recordOf: (performed: readonly LoggedCommand[], lastStep: number) => SessionRecord;
}

const CHECKPOINT_STEPS = 1500;
const APART_STEPS = 5 * STEPS_PER_SECOND;

/** `run` has to be new. */
export function* liveOnce(
  stage: Stage,
  entries: readonly NumberedCommand[],
  heedRun: (step: number) => void = () => undefined,
): Generator<void, LivedOnce> {
  const { run, writer, job, log } = stage;
  const { plant } = run;
  const performed: LoggedCommand[] = [];
  const checkpoints: Checkpoint[] = [];
  const secondHashes: string[] = [];
  const keep = (next: number): void => {
    const last = checkpoints.at(-1);
    if (last && plant.step - last.step < APART_STEPS) return;
    checkpoints.push({
      step: plant.step,
      entries: next,
      performed: performed.length,
      run: run.snapshot(),
      mark: writer.mark(),
    });
  };
  keep(0);
  yield* playEntries({
    run,
    job,
    mode: log.mode,
    entries,
    done: 0,
    lastStep: log.lastStep,
    performed,
    refused: [],
    beforeEntry: keep,
    afterStep(next) {
      if (plant.step % STEPS_PER_SECOND !== 0) return false;
      secondHashes.push(plant.stateHash());
      if (plant.step % CHECKPOINT_STEPS === 0) keep(next);
      if (plant.step % STEPS_PER_MINUTE === 0) heedRun(plant.step);
      return false;
    },
  });
  return {
    entries,
    performed,
    checkpoints,
    secondHashes,
    record: stage.recordOf(performed, plant.step),
    stateHash: plant.stateHash(),
    lastStep: plant.step,
  };
}
