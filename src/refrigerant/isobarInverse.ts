/** Enthalpy from temperature or entropy on one side of the dome, by Newton's method on the look-up itself. */
import type { Isobar } from './refrigerant';

/** How near it comes, J/kg, and how many rounds it may take. */
const TOLERANCE = 1e-6;
const MOST_ROUNDS = 40;

/** `side` is -1 for liquid, below the edge's enthalpy, and 1 for vapour; the search starts at the edge and stays outside. */
export function invertTemperature(isobar: Isobar, temperatureK: number, edge: number, side: -1 | 1): number {
  let h = edge + side * 1e-3;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = (temperatureK - isobar.temperatureK(h)) / isobar.temperatureSlope(h);
    h += step;
    if (side * (h - edge) <= 0) h = edge + side * 1e-9;
    if (Math.abs(step) < TOLERANCE) break;
  }
  return h;
}

/** The same for entropy, with dh/ds = T at constant pressure. */
export function invertEntropy(isobar: Isobar, entropyJPerKgK: number, edge: number, side: -1 | 1): number {
  let h = edge;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const step = (entropyJPerKgK - isobar.entropyJPerKgK(h)) * isobar.temperatureK(h);
    h += step;
    if (side * (h - edge) < 0) h = edge;
    if (Math.abs(step) < TOLERANCE) break;
  }
  return h;
}
