/**
 * Saturation pressure of water over liquid and over ice, Pa: Hyland and Wexler, Formulations for the thermodynamic
 * properties of the saturated phases of H2O from 173.15 K to 473.15 K, ASHRAE Transactions 89(2A) (1983) 500; the
 * coefficients as printed in ASHRAE Handbook Fundamentals, ch. 1 (psychrometrics). Ice below 273.15 K.
 */
import { exp } from '../numerics/exp';
import { ln } from '../numerics/ln';

export const LOWEST_WATER_TEMPERATURE_K = 173.15;
export const HIGHEST_WATER_TEMPERATURE_K = 473.15;
/** Triple point of water; below it saturation is over ice. */
export const ICE_POINT_K = 273.16;

/** Saturation pressure of water, Pa; `temperatureK` from 173.15 to 473.15 K, held at the ends outside. */
export function waterSaturationPressurePa(temperatureK: number): number {
  const t = Math.min(Math.max(temperatureK, LOWEST_WATER_TEMPERATURE_K), HIGHEST_WATER_TEMPERATURE_K);
  return t < ICE_POINT_K ? exp(overIce(t)) : exp(overLiquid(t));
}

function overIce(t: number): number {
  const series = -9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.484024e-13));
  return -5.6745359e3 / t + 6.3925247 + t * series + 4.1635019 * ln(t);
}

function overLiquid(t: number): number {
  const series = -4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8);
  return -5.8002206e3 / t + 1.3914993 + t * series + 6.5459673 * ln(t);
}
