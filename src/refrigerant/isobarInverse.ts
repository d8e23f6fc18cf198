/**
 * Enthalpy from temperature or entropy on one side of the dome, by Newton's method on the look-up itself. A step leaves an
 * error of its square times a small number, so the search ends with the first short step.
 */
import type { Isobar } from './refrigerant';

/** Steps, J/kg, after which less than 1e-6 J/kg is left. */
const SHORT_BY_TEMPERATURE = 0.05;
const SHORT_BY_ENTROPY = 0.5;
const MOST_ROUNDS = 40;

/** `side` is -1 for liquid, below the edge's enthalpy, and 1 for vapour; the search starts at the edge and stays outside. */
export function invertTemperature(isobar: Isobar, temperatureK: number, edge: number, side: -1 | 1): number {
  let h = edge + side * 1e-3;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = (temperatureK - isobar.temperatureK(h)) / isobar.temperatureSlope(h);
    h += step;
    if (side * (h - edge) <= 0) h = edge + side * 1e-9;
    if (Math.abs(step) < SHORT_BY_TEMPERATURE) break;
  }
  return h;
}

/** The same for entropy: dh/ds = T and d2h/ds2 = T dT/dh at constant pressure; the first step has both. */
export function invertEntropy(isobar: Isobar, entropyJPerKgK: number, edge: number, side: -1 | 1): number {
  const away = entropyJPerKgK - (side > 0 ? isobar.vapourEntropyJPerKgK : isobar.liquidEntropyJPerKgK);
  const straight = away * isobar.temperatureK(edge + side * 1e-3);
  let h = edge + straight * (1 + 0.5 * away * isobar.temperatureSlope(edge + side * 1e-3));
  if (side * (h - edge) < 0) h = edge;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = (entropyJPerKgK - isobar.entropyJPerKgK(h)) * isobar.temperatureK(h);
    h += step;
    if (side * (h - edge) < 0) h = edge;
    if (Math.abs(step) < SHORT_BY_ENTROPY) break;
  }
  return h;
}
