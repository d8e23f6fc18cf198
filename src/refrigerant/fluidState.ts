/** A state of a fluid with everything the `properties` command prints, and the pairs it may be asked by. */
export type Phase = 'liquid' | 'twoPhase' | 'vapour' | 'supercritical';

export interface FluidState {
  readonly pressurePa: number;
  readonly temperatureK: number;
  readonly densityKgPerM3: number;
  readonly enthalpyJPerKg: number;
  readonly entropyJPerKgK: number;
  readonly internalEnergyJPerKg: number;
  /** Vapour share by mass; null outside the dome. */
  readonly quality: number | null;
  readonly phase: Phase;
}

export const PROPERTY_PAIRS = ['p,h', 'p,T', 'T,q', 'p,q', 'rho,u'] as const;
export type PropertyPair = (typeof PROPERTY_PAIRS)[number];

/** A state from two numbers in SI, in the order of the pair. Throws `OutOfRangeError`. */
export type StateFinder = (pair: PropertyPair, first: number, second: number) => FluidState;
