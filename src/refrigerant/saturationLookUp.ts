/**
 * Saturation pressure and temperature from the tables, from the coldest point of the line up to the critical point. The
 * last 0.7 K, over the tables' top, run straight in (T, ln p) to the critical point itself (off by under 1e-5).
 */
import { exp } from '../numerics/exp';
import { ln } from '../numerics/ln';
import { checkRange } from './checkRange';
import type { Isobar } from './refrigerant';
import type { StoredTable } from './tableCodec';

export interface SaturationLookUp {
  readonly minTemperatureK: number;
  pressurePa(temperatureK: number): number;
  temperatureK(pressurePa: number): number;
}

const TOLERANCE = 1e-12;
const MOST_ROUNDS = 100;

/** `cursor` is moved at will and throws at no pressure. */
export function createSaturationLookUp(
  id: string,
  stored: StoredTable,
  cursor: Isobar,
  minPressurePa: number,
): SaturationLookUp {
  const { topPressurePa, criticalPressurePa, criticalTemperatureK } = stored;
  cursor.setPressurePa(topPressurePa);
  const topTemperatureK = cursor.saturationTemperatureK;
  cursor.setPressurePa(minPressurePa);
  const minTemperatureK = Math.max(cursor.saturationTemperatureK, stored.minTemperatureK);
  const lowestPressurePa = Math.max(
    minPressurePa,
    newton(cursor, minTemperatureK, minPressurePa, topPressurePa),
  );
  const logSlope = ln(criticalPressurePa / topPressurePa) / (criticalTemperatureK - topTemperatureK);
  return {
    minTemperatureK,
    pressurePa(temperatureK) {
      checkRange(id, 'saturation temperature', temperatureK, minTemperatureK, criticalTemperatureK, 'K');
      if (temperatureK > topTemperatureK)
        return topPressurePa * exp(logSlope * (temperatureK - topTemperatureK));
      return newton(cursor, temperatureK, minPressurePa, topPressurePa);
    },
    temperatureK(pressurePa) {
      checkRange(id, 'saturation pressure', pressurePa, lowestPressurePa, criticalPressurePa, 'Pa');
      if (pressurePa > topPressurePa) return topTemperatureK + ln(pressurePa / topPressurePa) / logSlope;
      cursor.setPressurePa(pressurePa);
      return cursor.saturationTemperatureK;
    },
  };
}

/** Newton with the Clapeyron slope, dp/dT = (hv - hl)/(T (vv - vl)), held in a bracket that closes. */
function newton(cursor: Isobar, temperatureK: number, lowest: number, highest: number): number {
  let low = lowest;
  let high = highest;
  let pressurePa = Math.sqrt(low * high);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    cursor.setPressurePa(pressurePa);
    const gap = temperatureK - cursor.saturationTemperatureK;
    if (gap > 0) low = pressurePa;
    else high = pressurePa;
    const latent = cursor.vapourEnthalpyJPerKg - cursor.liquidEnthalpyJPerKg;
    const expansion = cursor.vapourVolumeM3PerKg - cursor.liquidVolumeM3PerKg;
    const step = (gap * latent) / (cursor.saturationTemperatureK * expansion);
    const next = pressurePa + step;
    if (Math.abs(step) < TOLERANCE * pressurePa || high - low < TOLERANCE * high) return pressurePa;
    pressurePa = next > low && next < high ? next : Math.sqrt(low * high);
  }
  return pressurePa;
}
