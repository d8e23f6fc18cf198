/**
 * Why a log cannot be run: it was made by another engine or of another scenario, or one of its commands could not have
 * been given. `sessionCore` throws these and never restamps or repairs a log.
 */
import type { LoggedCommand, SessionLog } from './corePort';
import { isRewind } from './liveLog';

/** A log of another engine or scenario: it may be shown with the score it had, not run. */
export class OtherLogError extends RangeError {
  override readonly name = 'OtherLogError';
  constructor(readonly other: 'engine' | 'scenario') {
    super(`the log was made by another ${other}`);
  }
}

/** A log that no session can have left. `number` counts commands from 1; 0 is the log as a whole. */
export class BrokenLogError extends RangeError {
  override readonly name = 'BrokenLogError';
  constructor(
    readonly number: number,
    readonly reason: string,
    readonly params: Readonly<Record<string, string>> = {},
  ) {
    super(`command ${number} of the log could not have been given: ${reason}`);
  }
}

/** Throws `OtherLogError`. */
export function refuseOther(
  log: Pick<SessionLog, 'engineHash' | 'scenarioHash'>,
  own: { readonly engineHash: string; readonly scenarioHash: string },
): void {
  if (log.engineHash !== own.engineHash) throw new OtherLogError('engine');
  if (log.scenarioHash !== own.scenarioHash) throw new OtherLogError('scenario');
}

/** What can be seen without running it: order, and going back. Throws `BrokenLogError`. */
export function refuseDisorder({ commands, lastStep, mode }: SessionLog): void {
  let step = 0;
  let finished = false;
  commands.forEach((entry, at) => {
    const no = (reason: string): BrokenLogError => new BrokenLogError(at + 1, `session.refused.${reason}`);
    if (finished) throw no('over');
    if (entry.step < step) throw no('outOfOrder');
    if (isRewind(entry)) {
      if (mode === 'assessed') throw no('noGoingBack');
      if (Number(entry.command.step) > entry.step) throw no('notYetLived');
      step = Number(entry.command.step);
    } else step = entry.step;
    finished = entry.command.do === 'finish';
  });
  if (lastStep < step) throw new BrokenLogError(0, 'session.refused.outOfOrder');
}

/** Number in the log, from 1, of an entry that is still in force. */
export function numberOf(commands: readonly LoggedCommand[], { command }: LoggedCommand): number {
  return commands.findIndex((entry) => entry.command === command) + 1;
}
