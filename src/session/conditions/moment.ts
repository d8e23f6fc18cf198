/**
 * What a condition is asked about: the numbers of one moment and the events that fall into it. The running session and
 * a row of a record both are one, so live watches and the score read the same language.
 */
import type { PlantEvent } from '../../plant/commandSpecs';
import type { SignalSpec } from '../../plant/signalTypes';

export interface Moment {
  value(index: number): number;
  readonly events: readonly PlantEvent[];
}

/** The closed list of signals a condition may name. */
export interface SignalTable {
  readonly signals: readonly SignalSpec[];
}

export type Predicate = (moment: Moment) => boolean;
