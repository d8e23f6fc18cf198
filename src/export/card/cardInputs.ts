/** What is typed in for a car card: what the real car's label and papers say, and the day. SI. */
import type { Place } from '../../../shared/schema/persons';
import type { RefrigerantId } from '../../refrigerant/refrigerant';

export interface CardInputs {
  /** Of the label under the hood, or of the service information. */
  readonly labelChargeKg: number;
  readonly labelRefrigerant: RefrigerantId;
  readonly loop: LoopKind;
  /** An R-12 car that gets R-134a: no other conversion is lawful. */
  readonly converts: boolean;
  /** Of the label's charge where it converts: the maker's figure, else common practice. */
  readonly convertedShare: number;
  readonly ambientK: number;
  readonly relativeHumidity: number;
  readonly altitudeM: number;
  /** Refrigerant in one can, not what the can weighs. */
  readonly canNetKg: number;
  readonly jurisdiction: Place;
}

export const LOOP_KINDS = ['orifice-tube', 'expansion-valve'] as const;
export type LoopKind = (typeof LOOP_KINDS)[number];

/** 80 to 90 % of the R-12 charge, most often 85 %: common practice, no source. */
export const CONVERTED_SHARE = { least: 0.8, usual: 0.85, most: 0.9 } as const;

/** What may be typed; beyond it no card is made. Weather: where the model is tested. */
export const CARD_LIMITS = {
  labelChargeKg: { least: 0.2, most: 3 },
  ambientK: { least: 283.15, most: 318.15 },
  relativeHumidity: { least: 0, most: 1 },
  altitudeM: { least: 0, most: 3000 },
  canNetKg: { least: 0.05, most: 1 },
  convertedShare: { least: 0.7, most: 1 },
} as const;

export type LimitedInput = keyof typeof CARD_LIMITS;

/** The first number that is none or lies outside, or null. */
export function outside(inputs: Readonly<Record<LimitedInput, number>>): LimitedInput | null {
  const names = Object.keys(CARD_LIMITS) as LimitedInput[];
  const isIn = (name: LimitedInput): boolean =>
    inputs[name] >= CARD_LIMITS[name].least && inputs[name] <= CARD_LIMITS[name].most;
  return names.find((name) => !isIn(name)) ?? null;
}

/** What goes into the car. */
export const filledWith = ({ converts, labelRefrigerant }: CardInputs): RefrigerantId =>
  converts ? 'R-134a' : labelRefrigerant;
