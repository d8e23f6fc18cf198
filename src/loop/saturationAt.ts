/** Saturation pressure at a temperature, by Newton steps of Clausius and Clapeyron: dp/dT = (hv - hl) / (T (vv - vl)). */
import type { Isobar } from '../refrigerant/refrigerant';

const ROUNDS = 6;
const CLOSE_K = 1e-4;
const LEAST_PA = 5;

/** Pa. `cursor` is left there; `startPa` is a guess. Depends on nothing else, so a restored run goes on alike. */
export function saturationPressureAt(
  cursor: Isobar,
  startPa: number,
  temperatureK: number,
  mostPa: number,
): number {
  let p = startPa < LEAST_PA ? LEAST_PA : startPa > mostPa ? mostPa : startPa;
  for (let i = 0; i < ROUNDS; i++) {
    cursor.setPressurePa(p);
    const away = temperatureK - cursor.saturationTemperatureK;
    if (away < CLOSE_K && away > -CLOSE_K) return p;
    const latent = cursor.vapourEnthalpyJPerKg - cursor.liquidEnthalpyJPerKg;
    const swell = cursor.vapourVolumeM3PerKg - cursor.liquidVolumeM3PerKg;
    const step = (away * latent) / (cursor.saturationTemperatureK * swell);
    // a full Newton step from far away may leave the table
    p += step < -0.6 * p ? -0.6 * p : step > 1.5 * p ? 1.5 * p : step;
    if (p < LEAST_PA) p = LEAST_PA;
    if (p > mostPa) return mostPa;
  }
  return p;
}
