/**
 * What the rest of the program may ask of a refrigerant at run time. Only this folder knows how the answer is found
 * (tables built from the equation of state).
 *
 * All enthalpies and entropies use the IIR reference: h = 200 kJ/kg and s = 1 kJ/(kg K) for saturated liquid at 273.15 K.
 * Pressures are absolute. An argument outside the range of the fluid throws `OutOfRangeError`, which says the range.
 */

export type RefrigerantId = 'R-134a' | 'R-12' | 'R-1234yf';

/**
 * One pressure, many questions: a vessel of the loop has one pressure and several cells, so the saturation line is
 * looked up once and every cell asks about its own enthalpy. Mutable and reused; no call allocates.
 */
export interface Isobar {
  /** Moves the cursor; refreshes every saturation field below. */
  setPressurePa(pressurePa: number): void;
  readonly pressurePa: number;
  readonly saturationTemperatureK: number;
  readonly liquidEnthalpyJPerKg: number;
  readonly vapourEnthalpyJPerKg: number;
  readonly liquidVolumeM3PerKg: number;
  readonly vapourVolumeM3PerKg: number;
  readonly liquidEntropyJPerKgK: number;
  readonly vapourEntropyJPerKgK: number;
  /** (h - hl)/(hv - hl): below 0 subcooled, above 1 superheated. */
  quality(enthalpyJPerKg: number): number;
  temperatureK(enthalpyJPerKg: number): number;
  volumeM3PerKg(enthalpyJPerKg: number): number;
  entropyJPerKgK(enthalpyJPerKg: number): number;
  /** dT/dh at constant pressure, K per (J/kg); 0 between the saturation lines. */
  temperatureSlope(enthalpyJPerKg: number): number;
  /** T, v, dT/dh and dv/dh (at constant pressure) at once into `out` [0..3]; cheaper than asking one by one. */
  lookUp(enthalpyJPerKg: number, out: Float64Array): void;
  /** Volume at enthalpy `heat[at]` over `mass[at]` into `out[at]`: no number crosses the call, so none is boxed. */
  volumeOf(heat: Float64Array, mass: Float64Array, at: number, out: Float64Array): void;
  /** Temperature at each of `enthalpy[from]` to before `to`, into the same places of `out`. */
  temperaturesOf(enthalpy: Float64Array, from: number, to: number, out: Float64Array): void;
  /** Inverse of `entropyJPerKgK` at this pressure. */
  enthalpyFromEntropyJPerKg(entropyJPerKgK: number): number;
  /** Inverse of `temperatureK` in one phase: liquid at or below saturation temperature, vapour above. */
  enthalpyFromTemperatureJPerKg(temperatureK: number): number;
}

export interface Refrigerant {
  readonly id: RefrigerantId;
  readonly molarMassKgPerMol: number;
  readonly criticalPressurePa: number;
  readonly criticalTemperatureK: number;
  readonly gasConstantJPerKgK: number;
  /** Range in which every look-up is answered; outside it `OutOfRangeError`. Temperatures: of liquid and of vapour. */
  readonly range: {
    readonly minPressurePa: number;
    readonly maxPressurePa: number;
    readonly minTemperatureK: number;
    readonly maxTemperatureK: number;
    /** Coldest temperature on the saturation line; it ends at the critical point. */
    readonly minSaturationTemperatureK: number;
  };
  /**
   * A new cursor, for one owner. `throw` (the default) refuses a pressure outside `range`. `continue` is for the loop's
   * step: it never throws, and goes on smoothly past the ends (any pressure above 0, any enthalpy; see tableIsobar.ts).
   */
  isobar(outside?: 'throw' | 'continue'): Isobar;
  /** Up to the critical point. */
  saturationPressurePa(temperatureK: number): number;
  saturationTemperatureK(pressurePa: number): number;
}
