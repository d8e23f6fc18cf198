/**
 * The record of a session, made by running its log again: what the score and the debrief are worked out from, and all
 * they need. A row is one moment: the start, each command after it acted, each step in which something happened, a watch
 * changed or a rule's condition came or went, and each whole second.
 */
import type { Command, PlantEvent } from '../../plant/commandSpecs';
import type { SignalSpec } from '../../plant/signalTypes';
import type { Transition } from '../controller/controller';
import type { Mode } from '../corePort';
import type { MeasureId } from './measures';

export interface RecordedEvent extends PlantEvent {
  readonly row: number;
  readonly step: number;
}

export interface RecordedAction {
  /** Counts from 1, in the order given. */
  readonly number: number;
  readonly row: number;
  readonly step: number;
  readonly command: Command;
}

export interface RecordedTransition extends Transition {
  readonly step: number;
}

export interface SessionRecord {
  readonly scenarioId: string;
  readonly seed: number;
  readonly mode: Mode;
  readonly lastStep: number;
  readonly signals: readonly SignalSpec[];
  /** Step of each row; rising, several rows may share a step. */
  readonly steps: Int32Array;
  /** Row by row, a value for each signal, SI. */
  readonly values: Float64Array;
  readonly events: readonly RecordedEvent[];
  readonly actions: readonly RecordedAction[];
  readonly transitions: readonly RecordedTransition[];
  /** How often the trainee went back in practice. */
  readonly wentBack: number;
  readonly measures: Readonly<Record<MeasureId, number>>;
}

/** Value of a signal in a row; NaN where there was nothing to read. Throws `RangeError` on an unknown signal. */
export function valueAt(record: SessionRecord, row: number, signal: string): number {
  return record.values[row * record.signals.length + indexOfSignal(record, signal)];
}

export function indexOfSignal({ signals }: Pick<SessionRecord, 'signals'>, id: string): number {
  const index = signals.findIndex((signal) => signal.id === id);
  if (index < 0) throw new RangeError(`the record has no signal "${id}"`);
  return index;
}

/** The last row at or before a step. */
export function rowAtStep({ steps }: SessionRecord, step: number): number {
  let low = 0;
  let high = steps.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (steps[middle] <= step) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}
