/**
 * A session to go on with from a moment of a finished one: the same car, with what had been done by then. Where a deed
 * stands at the moment it is one to be done otherwise, so the session stands just before it; else a little earlier.
 */
import { STEPS_PER_SECOND } from '../session/clock';
import type { SessionLog } from '../session/corePort';
import { numberedCommands } from '../session/whatIf/editLog';

const EARLIER_STEPS = 10 * STEPS_PER_SECOND;

export function branchAt(log: SessionLog, step: number, deed: number | null): SessionLog {
  const entries = numberedCommands(log);
  const at = deed === null ? -1 : entries.findIndex(({ number }) => number === deed);
  const begun = entries[0]?.step ?? 0;
  const lastStep = at < 0 ? Math.max(begun, step - EARLIER_STEPS) : step;
  const kept = at < 0 ? entries.filter((entry) => entry.step <= lastStep) : entries.slice(0, Math.max(1, at));
  const open = kept.filter(({ command }) => command.do !== 'finish');
  return { ...log, commands: open.map((entry) => ({ step: entry.step, command: entry.command })), lastStep };
}
