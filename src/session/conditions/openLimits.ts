/**
 * What a condition may still turn on while nothing happens and nobody does anything: the limits that its open comparisons
 * have, by signal. While no such signal passes, reaches or leaves one of its limits the condition comes to what it came to.
 */
import type { Comparison, Condition } from '../../../shared/schema/condition';
import { movesByItself } from './changesByItself';
import { matchingSignals } from './compileCondition';
import type { Moment, SignalTable } from './moment';
import { settled } from './settled';
import { valueFor } from './valueInUnit';

export interface Limit {
  readonly index: number;
  readonly value: number;
}

/** Asked in a moment without events. */
export type OpenLimits = (moment: Moment) => readonly Limit[];

const NONE: readonly Limit[] = [];

/** Throws `ConditionError` where `compileCondition` does. */
export function openLimits(condition: Condition, table: SignalTable): OpenLimits {
  const parts = partsOf(condition, table);
  const isSettled = settled(condition, table);
  return (moment) => (isSettled(moment) === null ? parts(moment) : NONE);
}

function partsOf(condition: Condition, table: SignalTable): OpenLimits {
  if ('all' in condition) return together(condition.all, table);
  if ('any' in condition) return together(condition.any, table);
  if ('not' in condition) return openLimits(condition.not, table);
  if ('event' in condition) return () => NONE;
  const limits = limitsOf(condition, table);
  return () => limits;
}

function together(conditions: readonly Condition[], table: SignalTable): OpenLimits {
  const parts = conditions.map((part) => openLimits(part, table));
  return (moment) => parts.flatMap((part) => part(moment));
}

function limitsOf({ signal, over, under, is }: Comparison, table: SignalTable): readonly Limit[] {
  const wanted = over ?? under ?? is;
  return matchingSignals(signal, table)
    .filter((index) => movesByItself(table.signals[index]))
    .map((index) => ({ index, value: valueFor(table.signals[index], wanted as string | number) }));
}
