/**
 * A condition as data -> one closure, made once. Signals are found, units turned into SI here; what runs each step only
 * compares numbers. A comparison with NaN (nothing to read) is false.
 *
 * Throws `ConditionError` for an unknown signal or event (with the nearest known one), a value that does not fit the signal's
 * unit, and a pattern that no signal matches.
 */
import type { Comparison, Condition, EventPattern } from '../../../shared/schema/condition';
import type { SignalSpec } from '../../plant/signalTypes';
import { nearest } from '../../words/nearest';
import { eventIds } from './eventIds';
import type { Predicate, SignalTable } from './moment';
import { valueFor } from './valueInUnit';

export class ConditionError extends RangeError {
  override readonly name = 'ConditionError';
}

export function compileCondition(condition: Condition, table: SignalTable): Predicate {
  if ('all' in condition) return every(condition.all.map((part) => compileCondition(part, table)));
  if ('any' in condition) return some(condition.any.map((part) => compileCondition(part, table)));
  if ('not' in condition) {
    const part = compileCondition(condition.not, table);
    return (moment) => !part(moment);
  }
  if ('event' in condition) return compileEvent(condition);
  return compileComparison(condition, matchingSignals(condition.signal, table), table);
}

function every(parts: readonly Predicate[]): Predicate {
  if (parts.length === 1) return parts[0];
  return (moment) => {
    for (const part of parts) if (!part(moment)) return false;
    return true;
  };
}

function some(parts: readonly Predicate[]): Predicate {
  if (parts.length === 1) return parts[0];
  return (moment) => {
    for (const part of parts) if (part(moment)) return true;
    return false;
  };
}

function compileEvent({ event, subject }: EventPattern): Predicate {
  if (!eventIds.includes(event)) throw new ConditionError(unknown('event', event, eventIds));
  return (moment) => {
    for (const happened of moment.events) {
      if (happened.id === event && (subject === undefined || happened.subject === subject)) return true;
    }
    return false;
  };
}

/** True where it holds for any of the signals named. */
export function compileComparison(
  comparison: Comparison,
  indices: readonly number[],
  table: SignalTable,
): Predicate {
  return some(indices.map((index) => compareOne(comparison, index, table)));
}

function compareOne({ signal, over, under, is }: Comparison, index: number, table: SignalTable): Predicate {
  const spec = table.signals[index];
  try {
    if (over !== undefined) {
      const limit = valueFor(spec, over);
      return (moment) => moment.value(index) > limit;
    }
    if (under !== undefined) {
      const limit = valueFor(spec, under);
      return (moment) => moment.value(index) < limit;
    }
    const wanted = valueFor(spec, is as string | number);
    return (moment) => moment.value(index) === wanted;
  } catch (error) {
    throw new ConditionError(`${signal}: ${(error as Error).message}`);
  }
}

/** Indexes of the signals a pattern names, at least one. */
export function matchingSignals(pattern: string, { signals }: SignalTable): number[] {
  const exact = pattern.includes('*') ? -1 : signals.findIndex(({ id }) => id === pattern);
  if (exact >= 0) return [exact];
  const wanted = pattern.split('.');
  const found: number[] = [];
  signals.forEach(({ id }: SignalSpec, index) => {
    const parts = id.split('.');
    if (
      parts.length === wanted.length &&
      parts.every((part, at) => wanted[at] === '*' || wanted[at] === part)
    ) {
      found.push(index);
    }
  });
  if (found.length > 0) return found;
  throw new ConditionError(
    unknown(
      'signal',
      pattern,
      signals.map(({ id }) => id),
    ),
  );
}

function unknown(what: string, id: string, known: Iterable<string>): string {
  const near = nearest(id, known);
  return `no ${what} "${id}"${near === undefined ? '' : `; did you mean "${near}"?`}`;
}
