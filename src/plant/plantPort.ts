/**
 * The plant as the session sees it: car, equipment and surroundings stepped together at 20 ms. Synchronous, no clock of
 * its own, no knowledge of scoring. Built by `buildPlant`.
 */
import type { Command, IdSet, Outcome, PlantEvent } from './commandSpecs';
import type { SignalSpec } from './signalTypes';

export interface Plant {
  /** Steps done since the start; simulated time is `step * 0.02 s`. */
  readonly step: number;
  /** Every signal of this vehicle and bench, in a fixed order; index into it with `signalIndex`. */
  readonly signals: readonly SignalSpec[];
  /** Throws on an unknown id, with the nearest known one. */
  signalIndex(id: string): number;
  /** Present value in the signal's unit; NaN where there is nothing to read (a gauge not coupled). Cheap. */
  value(index: number): number;
  /** One step of 20 ms. Returns what happened in it (mostly an empty shared array). */
  advance(): readonly PlantEvent[];
  /** Acts at once, before the next step. */
  apply(command: Command): Outcome;
  /** Ids an argument may take now; the rest of what exists is refused with a reason by `apply`. */
  choices(set: IdSet): readonly string[];
  /** Complete state, structure included; `restore` brings back exactly this. */
  snapshot(): PlantSnapshot;
  restore(snapshot: PlantSnapshot): void;
  /** Hash of the whole numeric state, 16 hex digits. */
  stateHash(): string;
  books(): Books;
}

/** Opaque outside the plant; structured-clone safe. */
export interface PlantSnapshot {
  readonly step: number;
  readonly numbers: Float64Array;
  readonly structure: string;
}

/** Conservation over the whole network, hoses, cans and room included. */
export interface Books {
  readonly refrigerantKg: number;
  readonly massErrorRelative: number;
  readonly energyErrorRelative: number;
  /** kg by vessel id. */
  readonly massByVesselKg: Readonly<Record<string, number>>;
  /** kg that left to the air. */
  readonly ventedKg: number;
}
