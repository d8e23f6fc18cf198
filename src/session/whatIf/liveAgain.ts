/**
 * The same session with its actions given otherwise. Only what follows the first change is run: from the last checkpoint
 * before it, to the moment in which both stand alike with the same actions to come, from where the rest is the one already
 * written. The answer is the same as of running everything, bit for bit.
 */
import { STEPS_PER_SECOND } from '../clock';
import type { LoggedCommand } from '../corePort';
import type { SessionRecord } from '../record/record';
import type { SessionRun } from '../sessionRun';
import { changedSpan } from './changedSpan';
import type { NumberedCommand } from './editLog';
import { type FirstApart, lookForFirstApart } from './firstApart';
import type { Checkpoint, LivedOnce, Stage } from './livedOnce';
import { playEntries, type RefusedCommand } from './playEntries';
import { sameRun } from './sameRun';

export interface LivedAgain {
  readonly record: SessionRecord;
  readonly stateHash: string;
  readonly lastStep: number;
  readonly performed: readonly LoggedCommand[];
  readonly refused: readonly RefusedCommand[];
  /** Steps done when the two are first not alike; null where they are to the end. */
  readonly firstDifferentStep: number | null;
  /** Steps that had to be run. */
  readonly stepsRun: number;
}

/** `looking`: a second session of the same car, for finding the first different step; `heedApart` is told that step. */
export function* liveAgain(
  stage: Stage,
  looking: SessionRun,
  once: LivedOnce,
  edited: readonly NumberedCommand[],
  heedApart: (step: number) => void = () => undefined,
): Generator<void, LivedAgain> {
  const { run, writer, job, log } = stage;
  const { plant } = run;
  const span = changedSpan(once.entries, edited);
  if (span === null) return asItWas(once);
  const from = once.checkpoints.findLast(({ step }) => step <= span.fromStep) ?? once.checkpoints[0];
  run.restore(from.run);
  writer.goBackTo(from.mark, once.record);
  const performed = once.performed.slice(0, from.performed);
  const refused: RefusedCommand[] = [];
  const apart: FirstApart = lookForFirstApart({ stage, looking, once, edited, from });
  let met: Checkpoint | null = null;
  const checkpointAt = new Map(once.checkpoints.map((one) => [one.step, one]));
  yield* playEntries({
    run,
    job,
    mode: log.mode,
    entries: edited,
    done: from.entries,
    lastStep: log.lastStep,
    performed,
    refused,
    afterStep(next) {
      if (plant.step % STEPS_PER_SECOND !== 0) return false;
      if (apart.found() === null) apart.second(next);
      const apartAt = apart.found();
      if (apartAt !== null) heedApart(apartAt);
      if (plant.step <= span.toStep) return false;
      const there = checkpointAt.get(plant.step);
      if (!there || once.entries.length - there.entries !== edited.length - next) return false;
      if (!sameRun(run.snapshot(), there.run)) return false;
      met = there;
      return true;
    },
  });
  const stepsRun = plant.step - from.step;
  const told = { performed, refused, stepsRun };
  if (met === null) {
    const record = stage.recordOf(performed, plant.step);
    const firstDifferentStep = apart.atEnd();
    return { ...told, record, stateHash: plant.stateHash(), lastStep: plant.step, firstDifferentStep };
  }
  const { mark, performed: done }: Checkpoint = met;
  writer.takeRest(mark, once.record);
  performed.push(...once.performed.slice(done));
  const { stateHash, lastStep } = once;
  const record = stage.recordOf(performed, lastStep);
  return { ...told, record, stateHash, lastStep, firstDifferentStep: apart.found() };
}

const asItWas = ({ record, stateHash, lastStep, performed }: LivedOnce): LivedAgain => ({
  record,
  stateHash,
  lastStep,
  performed,
  refused: [],
  firstDifferentStep: null,
  stepsRun: 0,
});
