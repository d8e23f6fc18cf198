/**
 * Can a condition change its mind in a step in which nothing happened and nobody did anything? Not if it hangs on what
 * people set, or cannot hold without an event; such a one is only looked at around commands and events.
 */
import type { Condition } from '../../../shared/schema/condition';
import { matchingSignals } from './compileCondition';
import type { SignalTable } from './moment';
import { movesByItself } from './movesByItself';

export function changesByItself(condition: Condition, table: SignalTable): boolean {
  return !needsEvent(condition) && hasMovingSignal(condition, table);
}

function needsEvent(condition: Condition): boolean {
  if ('all' in condition) return condition.all.some(needsEvent);
  if ('any' in condition) return condition.any.every(needsEvent);
  return 'event' in condition;
}

function hasMovingSignal(condition: Condition, table: SignalTable): boolean {
  if ('all' in condition) return condition.all.some((part) => hasMovingSignal(part, table));
  if ('any' in condition) return condition.any.some((part) => hasMovingSignal(part, table));
  if ('not' in condition) return hasMovingSignal(condition.not, table);
  if ('event' in condition) return false;
  return matchingSignals(condition.signal, table).some((index) => movesByItself(table.signals[index]));
}
