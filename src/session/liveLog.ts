/**
 * What of a log still holds after its rewinds.
 *
 * Going back to step S: the state when S steps were done, with the commands given at S but the last of them. So going
 * back to the step of a command undoes that command and all that came after it, and going back to a step without one
 * leaves what came before whole. The rewind itself stays in the list, at S, as a mark.
 */
import type { LoggedCommand } from './corePort';

export const isRewind = (entry: LoggedCommand): boolean => entry.command.do === 'rewind';

/** Commands that are still in force, oldest first, with a mark for each rewind. */
export function liveLog(commands: readonly LoggedCommand[]): LoggedCommand[] {
  let live: LoggedCommand[] = [];
  for (const entry of commands) {
    if (isRewind(entry)) {
      const toStep = Number(entry.command.step);
      live = [...goneBackTo(live, toStep), { step: toStep, command: entry.command }];
    } else live.push(entry);
  }
  return live;
}

/** `live` as it stands after going back to `step`, without the mark. */
export function goneBackTo(live: readonly LoggedCommand[], step: number): LoggedCommand[] {
  const kept = live.filter((entry) => entry.step <= step);
  const undone = kept.findLastIndex((entry) => entry.step === step && !isRewind(entry));
  if (undone >= 0) kept.splice(undone, 1);
  return kept;
}
