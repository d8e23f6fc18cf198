/** What the session itself forbids now: before it began, after it ended, while it is stopped, by mode. */
import type { Command } from '../plant/commandSpecs';
import type { Mode } from './corePort';
import type { SessionJob, SessionRun } from './sessionRun';

export interface GateProblem {
  readonly reason: string;
  readonly params: Readonly<Record<string, string>>;
}

export function gate(run: SessionRun, mode: Mode, job: SessionJob, command: Command): GateProblem | null {
  const no = (reason: string, params: Record<string, string> = {}): GateProblem => ({
    reason: `session.refused.${reason}`,
    params,
  });
  const { phase } = run.controller;
  const { stopped } = run.book;
  if (phase === 'briefing') return command.do === 'begin' ? null : no('notBegun');
  if (phase !== 'work') return no('over');
  if (stopped !== null) return command.do === 'rewind' || command.do === 'begin' ? null : no('stopped');
  if (command.do === 'begin') return no('hasBegun');
  if (command.do === 'rewind') {
    if (mode === 'assessed') return no('noGoingBack');
    return Number(command.step) > run.plant.step ? no('notYetLived') : null;
  }
  if (command.do === 'hint') {
    if (mode === 'assessed') return no('noHints');
    return Number(command.level) > job.hintLevels
      ? no('noSuchHint', { levels: String(job.hintLevels) })
      : null;
  }
  return null;
}
