/**
 * Plays actions at their steps, to the end of the log or to the step where they finish. What is refused is told and left
 * out. Where practice would hold the clock at something critical the run carries on, as a trainee may.
 *
 * It is a generator, so that whoever plays may breathe in between: it comes back after each stretch of simulated time.
 */
import type { Command } from '../../plant/commandSpecs';
import { STEPS_PER_SECOND } from '../clock';
import type { LoggedCommand, Mode } from '../corePort';
import { gate } from '../gate';
import type { SessionJob, SessionRun } from '../sessionRun';
import type { NumberedCommand } from './editLog';

export interface RefusedCommand extends NumberedCommand {
  readonly reason: string;
  readonly params: Readonly<Record<string, string>>;
}

export interface Playing {
  readonly run: SessionRun;
  readonly job: SessionJob;
  readonly mode: Mode;
  readonly entries: readonly NumberedCommand[];
  /** Entries before this one are behind it already. */
  readonly done: number;
  readonly lastStep: number;
  /** Takes what was done, in order. */
  readonly performed: LoggedCommand[];
  readonly refused: RefusedCommand[];
  /** Called after each step, before the commands given at it, with the entry that is next; true ends the playing. */
  readonly afterStep?: (next: number) => boolean;
  readonly beforeEntry?: (next: number) => void;
}

const STRETCH_STEPS = STEPS_PER_SECOND;
const CARRY_ON: Command = { do: 'begin' };

/** True where `afterStep` ended it. */
export function* playEntries(playing: Playing): Generator<void, boolean> {
  const { entries, done, lastStep, beforeEntry } = playing;
  for (let next = done; next < entries.length; next++) {
    if (yield* runTo(playing, entries[next].step, next)) return true;
    beforeEntry?.(next);
    give(playing, entries[next]);
  }
  return yield* runTo(playing, lastStep, entries.length);
}

function* runTo(
  { run, performed, afterStep }: Playing,
  step: number,
  next: number,
): Generator<void, boolean> {
  const { plant } = run;
  while (plant.step < step && run.controller.phase === 'work') {
    if (run.book.stopped !== null) {
      performed.push({ step: plant.step, command: CARRY_ON });
      run.perform(CARRY_ON);
    }
    run.step();
    if (afterStep?.(next)) return true;
    if (plant.step % STRETCH_STEPS === 0) yield;
  }
  return false;
}

function give({ run, job, mode, performed, refused }: Playing, entry: NumberedCommand): void {
  const { command, step, number } = entry;
  if (command.do === 'begin' && run.controller.phase === 'work' && run.book.stopped === null) return;
  const problem = gate(run, mode, job, command);
  const outcome = problem ? { ok: false as const, ...problem } : run.perform(command);
  if (outcome.ok) performed.push({ step: run.plant.step, command });
  else refused.push({ number, step, command, reason: outcome.reason, params: outcome.params });
}
