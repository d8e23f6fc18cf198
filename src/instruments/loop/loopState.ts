/** What the cutaway draws of a loop: how it is built, and how much of each stretch is liquid, how warm it is, what flows. */
import type { StatePoint } from '../phGeometry';

export interface Cell {
  /** Liquid by volume, 0..1. */
  readonly liquidRatio: number;
  readonly temperatureK: number;
}

export interface LoopBuild {
  readonly metering: 'orifice' | 'valve';
  /** Where liquid is kept: before the compressor, behind the condenser, or in a drier built on to the condenser. */
  readonly pot: 'accumulator' | 'receiver' | 'onCondenser';
  /** A second evaporator, with a valve of its own. */
  readonly hasRear: boolean;
}

export const isSameBuild = (one: LoopBuild, other: LoopBuild): boolean =>
  one.metering === other.metering && one.pot === other.pot && one.hasRear === other.hasRear;

export interface LoopState {
  readonly build: LoopBuild;
  /** Points 1 to 4 in the order of flow from the compressor's inlet. */
  readonly points: readonly StatePoint[];
  /** Coils cell by cell in the order of flow. */
  readonly condenser: readonly Cell[];
  readonly evaporator: readonly Cell[];
  readonly rear: readonly Cell[];
  readonly discharge: Cell;
  readonly pot: Cell;
  readonly liquid: Cell;
  readonly suction: Cell;
  readonly pumpedKgPerS: number;
  readonly meteredKgPerS: number;
  readonly rearKgPerS: number;
}

/** Of a healthy car handled alike: how much is liquid where; NaN where that is not told. */
export interface HealthyLoop {
  readonly pot: number;
  readonly condenser: readonly number[];
  readonly evaporator: readonly number[];
}
