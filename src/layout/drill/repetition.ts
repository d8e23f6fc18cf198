/**
 * What was missed comes back: a pure scheduler that counts in questions and knows no clock. A kind of bay that was
 * missed is asked again after 3 questions, then, each time it was right, after 8 and 21 [guess]; after that it is
 * forgotten. Missed again, it begins anew.
 */

import { portOf } from '../trace';
import { answerOf } from './answerOf';
import type { DrillBay } from './drill';

export interface DueKind {
  readonly kind: string;
  /** Count of answers at which it is due. */
  readonly dueAt: number;
  /** Index into the gaps. */
  readonly rung: number;
}

export interface Repetition {
  /** Answers given so far. */
  readonly answered: number;
  readonly right: number;
  /** Right answers in a row. */
  readonly inRow: number;
  readonly due: readonly DueKind[];
}

export const NOTHING_YET: Repetition = { answered: 0, right: 0, inRow: 0, due: [] };

const GAPS: readonly number[] = [3, 8, 21];
/** As many kinds are kept as one can be expected to work off. */
const MOST_KEPT = 12;

/** What a bay trains: a port on which line, in which kind of loop. */
export function kindOf(bay: DrillBay): string {
  const { port } = answerOf(bay);
  const { on } = portOf(bay.layout, port);
  const run = 'line' in on ? on.line.slice(0, on.line.lastIndexOf('-')) : on.part;
  return `${bay.metering}/${run}`;
}

/** The kind that is due now, the longest overdue first; null where a fresh bay is next. */
export function dueNow({ due, answered }: Repetition): DueKind | null {
  const ready = due.filter(({ dueAt }) => dueAt <= answered);
  return ready.length === 0 ? null : ready.reduce((a, b) => (b.dueAt < a.dueAt ? b : a));
}

export function afterAnswer(before: Repetition, kind: string, isRight: boolean): Repetition {
  const answered = before.answered + 1;
  const known = before.due.find((one) => one.kind === kind);
  const others = before.due.filter((one) => one.kind !== kind);
  return {
    answered,
    right: before.right + (isRight ? 1 : 0),
    inRow: isRight ? before.inRow + 1 : 0,
    due: [...others, ...next(known, kind, isRight, before.answered, answered)].slice(-MOST_KEPT),
  };
}

/** A kind that comes up before it is due, and is right, stays where it is. */
function next(
  known: DueKind | undefined,
  kind: string,
  isRight: boolean,
  before: number,
  answered: number,
): DueKind[] {
  if (!isRight) return [{ kind, dueAt: answered + GAPS[0], rung: 0 }];
  if (!known) return [];
  if (known.dueAt > before) return [known];
  const rung = known.rung + 1;
  return rung < GAPS.length ? [{ kind, dueAt: answered + GAPS[rung], rung }] : [];
}
