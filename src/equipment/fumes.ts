/**
 * What a refrigerant is in air: boiling point at one atmosphere, what may be breathed over a working day, and from which
 * share of the air it burns.
 *
 * Boiling points: the equations of state the tables are made from; the hydrocarbon's is propane's, the colder of its two.
 * Guidelines: R-134a 1,000 ppm (its MAK value); R-1234yf 500, R-12 and hydrocarbon 1,000 from memory. Lower flammable
 * limits: R-1234yf 6.2 % (ASHRAE 34, from memory), propane and isobutane 1.8 to 2.1 % from memory; R-134a and R-12 burn in
 * no mixture with air at room pressure.
 */
import type { ForeignId } from '../loop/foreign';

interface Fumes {
  readonly boilsK: number;
  readonly guidelinePpm: number;
  /** Share of the air by volume; null for what does not burn in it. */
  readonly burnsFrom: number | null;
}

export const FUMES: Readonly<Record<ForeignId, Fumes>> = {
  'R-134a': { boilsK: 247.08, guidelinePpm: 1000, burnsFrom: null },
  'R-12': { boilsK: 243.4, guidelinePpm: 1000, burnsFrom: null },
  'R-1234yf': { boilsK: 243.7, guidelinePpm: 500, burnsFrom: 0.062 },
  hydrocarbon: { boilsK: 231, guidelinePpm: 1000, burnsFrom: 0.02 },
};

/** A mole of any gas at 25 °C and one atmosphere. */
export const M3_PER_MOL = 0.024465;
/** Of the air. */
export const OXYGEN_SHARE = 0.209;
/** From this share of oxygen on people are short of it (common limit of confined-space work). */
export const LEAST_OXYGEN_SHARE = 0.195;

/** Round an open joint the air is not the room's yet: so much of it, changed in so long [guess]. */
export const CLOUD = { volumeM3: 0.5, stillPerS: 1 / 60, movedPerS: 1 / 15 } as const;

/** A gas heater of 10 kW draws the air it burns, three times over, from the room: 10 kW / 3.1 MJ/m3 x 3 (textbook, rounded). */
export const HEATER_AIR_M3_PER_S = 0.01;
/** Refrigerant gone through a flame that nose and eyes notice, kg [guess]. */
export const DECOMPOSED_TOLD_KG = 0.1e-3;
