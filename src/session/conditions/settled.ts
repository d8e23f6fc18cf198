/**
 * What a condition comes to for as long as nothing happens and nobody does anything: asked in a moment without events, it
 * says true or false where only what people set decides it, and null where a signal that moves by itself may.
 */
import type { Comparison, Condition } from '../../../shared/schema/condition';
import { movesByItself } from './changesByItself';
import { compileComparison, matchingSignals } from './compileCondition';
import type { Moment, SignalTable } from './moment';

export type Settled = (moment: Moment) => boolean | null;

/** Throws `ConditionError` where `compileCondition` does. */
export function settled(condition: Condition, table: SignalTable): Settled {
  if ('all' in condition) return decided(condition.all, false, table);
  if ('any' in condition) return decided(condition.any, true, table);
  if ('not' in condition) {
    const part = settled(condition.not, table);
    return (moment) => {
      const value = part(moment);
      return value === null ? null : !value;
    };
  }
  return 'event' in condition ? () => false : comparison(condition, table);
}

/** `all` is decided by one false, `any` by one true; else by all of them together. */
function decided(conditions: readonly Condition[], by: boolean, table: SignalTable): Settled {
  const parts = conditions.map((part) => settled(part, table));
  return (moment) => {
    let open = false;
    for (const part of parts) {
      const value = part(moment);
      if (value === by) return by;
      if (value === null) open = true;
    }
    return open ? null : !by;
  };
}

function comparison(compared: Comparison, table: SignalTable): Settled {
  const indices = matchingSignals(compared.signal, table);
  const still = indices.filter((index) => !movesByItself(table.signals[index]));
  const holds = compileComparison(compared, still, table);
  const rest = still.length < indices.length ? null : false;
  return (moment) => holds(moment) || rest;
}
