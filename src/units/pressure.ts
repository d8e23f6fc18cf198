/**
 * Pressure units. Gauge pressure (over the atmosphere around) and absolute pressure are two quantities and are never
 * mixed without the atmosphere being named. Factors: NIST Special Publication 811 (2008), appendix B.8.
 */

/** Standard atmosphere, exact (10th CGPM, 1954). */
export const STANDARD_ATMOSPHERE_PA = 101325;
/** Pound-force per square inch: 4.4482216152605 N over (0.0254 m)^2. */
export const PA_PER_PSI = 6894.757293168361;
export const PA_PER_BAR = 100000;
export const PA_PER_KPA = 1000;
export const PA_PER_MPA = 1000000;
/** Inch of mercury at 0 °C. */
export const PA_PER_INCH_OF_MERCURY = 3386.389;
/** Micron, a thousandth of a torr, which is 1/760 atmosphere. */
export const PA_PER_MICRON = 101325 / 760000;

export function gaugePressurePaFromAbsolute(
  pressurePa: number,
  atmospherePa: number = STANDARD_ATMOSPHERE_PA,
): number {
  return pressurePa - atmospherePa;
}

export function pressurePaFromGauge(
  gaugePressurePa: number,
  atmospherePa: number = STANDARD_ATMOSPHERE_PA,
): number {
  return gaugePressurePa + atmospherePa;
}

export function psiFromPa(pressurePa: number): number {
  return pressurePa / PA_PER_PSI;
}

export function paFromPsi(pressurePsi: number): number {
  return pressurePsi * PA_PER_PSI;
}

/** Vacuum below the atmosphere around, in inches of mercury, as a compound gauge counts it: 0 at atmosphere, rising. */
export function inchesOfVacuumFromGaugePa(gaugePressurePa: number): number {
  return -gaugePressurePa / PA_PER_INCH_OF_MERCURY;
}
