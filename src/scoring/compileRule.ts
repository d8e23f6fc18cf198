/**
 * One rule -> one closure over a record: was it kept, how far, and at which rows does the evidence stand. Compiled once
 * for a list of signals. Throws `ConditionError` for a signal, measure or value that is none.
 */
import type { Condition } from '../../shared/schema/condition';
import type { Rule } from '../../shared/schema/rubric';
import { STEPS_PER_SECOND } from '../session/clock';
import { ConditionError, compileCondition } from '../session/conditions/compileCondition';
import type { Predicate, SignalTable } from '../session/conditions/moment';
import { valueFor } from '../session/conditions/valueInUnit';
import { measureList } from '../session/record/measures';
import type { SessionRecord } from '../session/record/record';
import { parseQuantity } from '../units/quantity';
import type { RowMoments } from './rowMoments';

/** `advised`: a deed that would have broken it where it is asked, told as advice here; what was left undone is idle. */
export type Status = 'kept' | 'broken' | 'idle' | 'advised';

export interface Verdict {
  readonly status: Status;
  /** Share of the points earned, 0 to 1. */
  readonly share: number;
  /** Row the sentence quotes; of a prohibition that was kept, the last in which it could have been broken. */
  readonly row: number;
  /** Times it was broken. */
  readonly times: number;
  /** Whether there are points to be had at all: it is asked here, and what it measures was worked out. */
  readonly counts: boolean;
}

export type Judge = (record: SessionRecord, rows: RowMoments) => Verdict;

export function compileRule(rule: Rule, table: SignalTable): Judge {
  const judge = compileNeeds(rule, table);
  if (rule.asked === undefined) return judge;
  const asked = compileCondition(rule.asked, table);
  return (record, rows) => {
    const verdict = judge(record, rows);
    const row = lastRow(rows, asked);
    if (row !== null) return verdict.status === 'kept' && isLastOne(rule) ? { ...verdict, row } : verdict;
    const isAdvice = verdict.status === 'broken' && 'never' in rule;
    return { ...verdict, status: isAdvice ? 'advised' : 'idle', share: 0, counts: false };
  };
}

/** A prohibition whose own `needs` points at no row: it quotes the last in which it was a question. */
const isLastOne = (rule: Rule): boolean => 'never' in rule && rule.needs === undefined;

function compileNeeds(rule: Rule, table: SignalTable): Judge {
  const judge = compileForm(rule, table);
  if (rule.needs === undefined) return judge;
  const needed = compileCondition(rule.needs, table);
  return (record, rows) => {
    const row = lastRow(rows, needed);
    if (row === null) return idle(rows);
    const verdict = judge(record, rows);
    return verdict.status === 'kept' && 'never' in rule ? { ...verdict, row } : verdict;
  };
}

function compileForm(rule: Rule, table: SignalTable): Judge {
  if ('never' in rule) return compileNever(rule.never, table);
  if ('done' in rule) return compileDone(compileCondition(rule.done, table));
  if ('before' in rule) {
    return compileBefore(
      compileCondition(rule.before.first, table),
      compileCondition(rule.before.then, table),
    );
  }
  if ('while' in rule) {
    const steps = Math.round(parseQuantity(rule.while.for, 'time') * STEPS_PER_SECOND);
    const both = compileCondition({ all: [rule.while.during, rule.while.condition] }, table);
    return compileWhile(both, steps);
  }
  return compileOutcome(rule.outcome);
}

/** Broken at each row in which it becomes true; a rule about an event, at each row in which the event happens. */
function compileNever(condition: Condition, table: SignalTable): Judge {
  const holds = compileCondition(condition, table);
  const isMomentary = namesEvent(condition);
  return (_, rows) => {
    let times = 0;
    let first = rows.count - 1;
    let was = false;
    for (let row = 0; row < rows.count; row++) {
      const now = holds(rows.at(row));
      if (now && (isMomentary || !was)) {
        if (times === 0) first = row;
        times++;
      }
      was = now;
    }
    return times === 0 ? kept(first) : { ...broken(first), times };
  };
}

function compileDone(holds: Predicate): Judge {
  return (_, rows) => {
    const row = firstRow(rows, holds);
    return row === null ? broken(rows.count - 1) : kept(row);
  };
}

/** Kept when `first` was true before, or in the very row in which, `then` came true first. Idle without `then`. */
function compileBefore(first: Predicate, then: Predicate): Judge {
  return (_, rows) => {
    const thenRow = firstRow(rows, then);
    if (thenRow === null) return idle(rows);
    const firstAt = firstRow(rows, first);
    return firstAt !== null && firstAt <= thenRow ? kept(thenRow) : broken(thenRow);
  };
}

/** Kept once it has held for `steps` without a break. */
function compileWhile(holds: Predicate, steps: number): Judge {
  return (record, rows) => {
    let since: number | null = null;
    for (let row = 0; row < rows.count; row++) {
      if (!holds(rows.at(row))) since = null;
      else {
        since ??= record.steps[row];
        if (record.steps[row] - since >= steps) return kept(row);
      }
    }
    return broken(rows.count - 1);
  };
}

/**
 * Full marks at `full` and beyond, none at `zero` and beyond, a straight line between. What is only weighed when the
 * ghosts have run has no points to be had before.
 */
function compileOutcome({
  measure,
  full,
  zero,
}: {
  measure: string;
  full: string | number;
  zero: string | number;
}): Judge {
  const found = measureList.find(({ id }) => id === measure);
  if (!found) throw new ConditionError(`no measure "${measure}"`);
  const [fullSi, zeroSi] = [valueFor(found, full), valueFor(found, zero)];
  if (zeroSi === fullSi) throw new ConditionError(`${measure}: zero and full are one`);
  return ({ measures }, rows) => {
    const value = measures[found.id];
    if (found.weighed && Number.isNaN(value)) return { ...idle(rows), counts: false };
    const share = Number.isNaN(value) ? 0 : Math.min(1, Math.max(0, (zeroSi - value) / (zeroSi - fullSi)));
    const row = rows.count - 1;
    return share === 1 ? kept(row) : { ...broken(row), share };
  };
}

const kept = (row: number): Verdict => ({ status: 'kept', share: 1, row, times: 0, counts: true });
const broken = (row: number): Verdict => ({ status: 'broken', share: 0, row, times: 1, counts: true });
const idle = (rows: RowMoments): Verdict => ({
  status: 'idle',
  share: 0,
  row: rows.count - 1,
  times: 0,
  counts: true,
});

function firstRow(rows: RowMoments, holds: Predicate): number | null {
  for (let row = 0; row < rows.count; row++) if (holds(rows.at(row))) return row;
  return null;
}

function lastRow(rows: RowMoments, holds: Predicate): number | null {
  for (let row = rows.count - 1; row >= 0; row--) if (holds(rows.at(row))) return row;
  return null;
}

function namesEvent(condition: Condition): boolean {
  if ('all' in condition) return condition.all.some(namesEvent);
  if ('any' in condition) return condition.any.some(namesEvent);
  if ('not' in condition) return namesEvent(condition.not);
  return 'event' in condition;
}
