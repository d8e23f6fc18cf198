/** Plays a plan on a session, line after line, the way a person with keys would. Refused lines are told, not hidden. */
import type { PlanLine } from '../../../shared/schema/plan';
import type { SessionCore } from '../corePort';
import { placedLines, readPlanLine, wordsOf } from './planWords';

export interface RefusedLine {
  /** Counts from 0, repeated lines written out. */
  readonly line: number;
  /** Where in the plan it is written. */
  readonly place: readonly (string | number)[];
  /** The command in words. */
  readonly words: string;
  readonly reason: string;
  readonly params: Readonly<Record<string, string>>;
}

export function playPlan(core: SessionCore, lines: readonly PlanLine[]): RefusedLine[] {
  const refused: RefusedLine[] = [];
  placedLines(lines).forEach(({ line, place }, at) => {
    const reading = readPlanLine(line);
    if ('problem' in reading) {
      const words = typeof line === 'string' ? line : Object.keys(line).join();
      refused.push({ line: at, place, words, ...reading.problem });
      return;
    }
    const { act } = reading;
    if (act.kind === 'wait') {
      for (let time = 0; time < act.times; time++) core.advance(act.steps, act.untilNotable);
      return;
    }
    const outcome = core.send(act.command);
    if (outcome.ok) return;
    const { reason, params } = outcome;
    refused.push({ line: at, place, words: wordsOf(act.command), reason, params });
  });
  return refused;
}
