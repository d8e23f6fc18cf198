/** Plays a plan on a session, line after line, the way a person with keys would. Refused lines are told, not hidden. */
import type { PlanLine } from '../../../shared/schema/plan';
import type { SessionCore } from '../corePort';
import { readPlanLine, singleLines } from './planWords';

export interface RefusedLine {
  /** Counts from 0, repeated lines written out. */
  readonly line: number;
  readonly reason: string;
  readonly params: Readonly<Record<string, string>>;
}

export function playPlan(core: SessionCore, lines: readonly PlanLine[]): RefusedLine[] {
  const refused: RefusedLine[] = [];
  singleLines(lines).forEach((line, at) => {
    const reading = readPlanLine(line);
    if ('problem' in reading) {
      refused.push({ line: at, ...reading.problem });
      return;
    }
    const { act } = reading;
    if (act.kind === 'wait') {
      for (let time = 0; time < act.times; time++) core.advance(act.steps, act.untilNotable);
      return;
    }
    const outcome = core.send(act.command);
    if (!outcome.ok) refused.push({ line: at, reason: outcome.reason, params: outcome.params });
  });
  return refused;
}
