/**
 * The first step after which two runs of a session do not stand alike. Hashes are compared at each second; the seconds in
 * which they part are run once more on a session of its own, step by step.
 */
import { STEPS_PER_SECOND } from '../clock';
import type { RunSnapshot, SessionRun } from '../sessionRun';
import type { NumberedCommand } from './editLog';
import type { Checkpoint, LivedOnce, Stage } from './livedOnce';
import { playEntries } from './playEntries';
import { toEnd } from './toEnd';

export interface FirstApart {
  /** To be called at each second of the new run until the step is found, with the entry that is next there. */
  second(next: number): void;
  /** The step, as far as is known by now. */
  found(): number | null;
  /** The same, once the new run has come to its end. */
  atEnd(): number | null;
}

export interface Lookers {
  readonly stage: Stage;
  readonly looking: SessionRun;
  readonly once: LivedOnce;
  readonly edited: readonly NumberedCommand[];
  readonly from: Checkpoint;
}

interface Alike {
  readonly step: number;
  readonly entries: number;
  readonly run: RunSnapshot;
}

/** A session that stands alike is kept this often, to look from there. */
const KEEP_STEPS = 5 * STEPS_PER_SECOND;

export function lookForFirstApart({ stage, looking, once, edited, from }: Lookers): FirstApart {
  const { plant } = stage.run;
  let alike: Alike = from;
  let found: number | null = null;

  /** Hash after each step from `alike` to `toStep`; at the end of all, after the last commands. */
  const hashes = (start: Alike, entries: readonly NumberedCommand[], toStep: number, isEnd: boolean) => {
    const byStep = new Map<number, string>();
    const note = (): void => void byStep.set(looking.plant.step, looking.plant.stateHash());
    looking.restore(start.run);
    const playing = playEntries({
      run: looking,
      job: stage.job,
      mode: stage.log.mode,
      entries: isEnd ? entries : entries.filter(({ step }) => step < toStep),
      done: start.entries,
      lastStep: toStep,
      performed: [],
      refused: [],
      afterStep() {
        if (looking.plant.step > alike.step) note();
        return false;
      },
    });
    toEnd(playing);
    if (isEnd) note();
    return byStep;
  };
  const search = (toStep: number, isEnd: boolean): number | null => {
    const start = once.checkpoints.findLast(({ step }) => step <= alike.step) ?? once.checkpoints[0];
    const now = hashes(alike, edited, toStep, isEnd);
    const was = hashes(start, once.entries, toStep, isEnd);
    const steps = [...new Set([...was.keys(), ...now.keys()])].sort((a, b) => a - b);
    return steps.find((step) => was.get(step) !== now.get(step)) ?? null;
  };
  return {
    second(next) {
      const isAlike = plant.stateHash() === once.secondHashes[plant.step / STEPS_PER_SECOND - 1];
      if (!isAlike) found = search(plant.step, plant.step > once.lastStep);
      else if (plant.step - alike.step >= KEEP_STEPS)
        alike = { step: plant.step, entries: next, run: stage.run.snapshot() };
    },
    found: () => found,
    atEnd() {
      const isSame = plant.step === once.lastStep && plant.stateHash() === once.stateHash;
      return found ?? (isSame ? null : search(Math.max(plant.step, once.lastStep), true));
    },
  };
}
