/**
 * The saturation line as a picture needs it: samples of temperature, absolute pressure and the two enthalpies, made from
 * the property tables by whoever holds them. Between samples: ln p is a straight line in T, enthalpy is linear.
 */
export interface SaturationLine {
  readonly fluid: string;
  /** K, rising. */
  readonly temperatureK: readonly number[];
  /** Pa absolute, rising. */
  readonly pressurePa: readonly number[];
  readonly liquidEnthalpyJPerKg: readonly number[];
  readonly vapourEnthalpyJPerKg: readonly number[];
  readonly criticalPressurePa: number;
  /** Enthalpies of vapour along temperatures, from the foot of the diagram up to where it condenses. */
  readonly superheated?: readonly VapourIsotherm[];
}

export interface VapourIsotherm {
  readonly temperatureK: number;
  /** Pa absolute, falling. */
  readonly pressurePa: readonly number[];
  readonly enthalpyJPerKg: readonly number[];
}

/** Index of the sample at or below `value`, so that index + 1 exists; -1 outside the line. */
function segment(samples: readonly number[], value: number): number {
  if (!(value >= samples[0]) || value > samples[samples.length - 1]) return -1;
  let low = 0;
  let high = samples.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (samples[middle] <= value) low = middle;
    else high = middle;
  }
  return low;
}

/** Absolute saturation pressure in Pa; NaN outside the line. */
export function saturationPressurePa(line: SaturationLine, temperatureK: number): number {
  const i = segment(line.temperatureK, temperatureK);
  if (i < 0) return Number.NaN;
  const share = (temperatureK - line.temperatureK[i]) / (line.temperatureK[i + 1] - line.temperatureK[i]);
  return Math.exp((1 - share) * Math.log(line.pressurePa[i]) + share * Math.log(line.pressurePa[i + 1]));
}

/** Saturation temperature in K of an absolute pressure in Pa; NaN outside the line. */
export function saturationTemperatureK(line: SaturationLine, pressurePa: number): number {
  const i = segment(line.pressurePa, pressurePa);
  if (i < 0) return Number.NaN;
  const share =
    Math.log(pressurePa / line.pressurePa[i]) / Math.log(line.pressurePa[i + 1] / line.pressurePa[i]);
  return line.temperatureK[i] + share * (line.temperatureK[i + 1] - line.temperatureK[i]);
}

/** Vapour share by mass of a state; below 0 subcooled, above 1 superheated; NaN outside the line. */
export function qualityAt(line: SaturationLine, pressurePa: number, enthalpyJPerKg: number): number {
  const i = segment(line.pressurePa, pressurePa);
  if (i < 0) return Number.NaN;
  const share =
    Math.log(pressurePa / line.pressurePa[i]) / Math.log(line.pressurePa[i + 1] / line.pressurePa[i]);
  const at = (samples: readonly number[]): number => samples[i] + share * (samples[i + 1] - samples[i]);
  const liquid = at(line.liquidEnthalpyJPerKg);
  return (enthalpyJPerKg - liquid) / (at(line.vapourEnthalpyJPerKg) - liquid);
}
