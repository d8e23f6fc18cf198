/**
 * What a condition comes to for as long as nothing happens and nobody does anything: asked in a moment without events, it
 * says true or false where only what people set decides it. Else it gives the limits of its open comparisons: while no signal
 * passes, reaches or leaves one of its own the condition comes to what it came to.
 */
import type { Comparison, Condition } from '../../../shared/schema/condition';
import { compileComparison, matchingSignals } from './compileCondition';
import type { Moment, SignalTable } from './moment';
import { movesByItself } from './movesByItself';
import { valueFor } from './valueInUnit';

export interface Limit {
  readonly index: number;
  readonly value: number;
}

export type Settled = (moment: Moment) => boolean | readonly Limit[];

/** Throws `ConditionError` where `compileCondition` does. */
export function settled(condition: Condition, table: SignalTable): Settled {
  if ('all' in condition) return decided(condition.all, false, table);
  if ('any' in condition) return decided(condition.any, true, table);
  if ('not' in condition) {
    const part = settled(condition.not, table);
    return (moment) => {
      const value = part(moment);
      return typeof value === 'boolean' ? !value : value;
    };
  }
  return 'event' in condition ? () => false : comparison(condition, table);
}

/** `all` is decided by one false, `any` by one true; else by all of them together. */
function decided(conditions: readonly Condition[], by: boolean, table: SignalTable): Settled {
  const parts = conditions.map((part) => settled(part, table));
  return (moment) => {
    const open: Limit[] = [];
    for (const part of parts) {
      const value = part(moment);
      if (value === by) return by;
      if (typeof value !== 'boolean') open.push(...value);
    }
    return open.length > 0 ? open : !by;
  };
}

function comparison(compared: Comparison, table: SignalTable): Settled {
  const { signal, over, under, is } = compared;
  const moves = (index: number): boolean => movesByItself(table.signals[index]);
  const indices = matchingSignals(signal, table);
  const still = indices.filter((index) => !moves(index));
  const holds = compileComparison(compared, still, table);
  const wanted = (over ?? under ?? is) as string | number;
  const open = indices
    .filter(moves)
    .map((index) => ({ index, value: valueFor(table.signals[index], wanted) }));
  return (moment) => holds(moment) || (open.length > 0 && open);
}
