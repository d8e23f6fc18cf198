/** The refrigerants of the program by id, each with its tables made ready once. */
import { OutOfRangeError } from './outOfRangeError';
import type { Isobar, Refrigerant, RefrigerantId } from './refrigerant';
import { decodeTable, type StoredTable } from './tableCodec';
import { TableIsobar } from './tableIsobar';
import { makeTableSet } from './tableSet';
import { table as r12 } from './tables/r12';
import { table as r1234yf } from './tables/r1234yf';
import { table as r134a } from './tables/r134a';

const STORED: Readonly<Record<RefrigerantId, StoredTable>> = { 'R-134a': r134a, 'R-12': r12, 'R-1234yf': r1234yf };

export const REFRIGERANT_IDS: readonly RefrigerantId[] = ['R-134a', 'R-12', 'R-1234yf'];

/** Range in which the tables are held to their accuracy (T 0.02 %, density 0.05 %). */
const MIN_PRESSURE_PA = 20;
const MAX_SHARE_OF_CRITICAL = 0.9;
const MIN_TEMPERATURE_K = 213.15;

const made = new Map<RefrigerantId, Refrigerant>();

/** The refrigerant of that id. The first call of each takes some milliseconds, later ones nothing. */
export function refrigerant(id: RefrigerantId): Refrigerant {
  const known = made.get(id);
  if (known !== undefined) return known;
  const fresh = makeRefrigerant(id, STORED[id]);
  made.set(id, fresh);
  return fresh;
}

function makeRefrigerant(id: RefrigerantId, stored: StoredTable): Refrigerant {
  const tables = makeTableSet(decodeTable(stored));
  const range = {
    minPressurePa: MIN_PRESSURE_PA,
    maxPressurePa: MAX_SHARE_OF_CRITICAL * stored.criticalPressurePa,
    minTemperatureK: MIN_TEMPERATURE_K,
    maxTemperatureK: stored.maxTemperatureK,
  };
  const cursor = new TableIsobar(tables, { fluid: id, ...range });
  return {
    id,
    molarMassKgPerMol: stored.molarMassKgPerMol,
    criticalPressurePa: stored.criticalPressurePa,
    criticalTemperatureK: stored.criticalTemperatureK,
    gasConstantJPerKgK: stored.gasConstantJPerKgK,
    range,
    isobar: (outside) => new TableIsobar(tables, outside === 'continue' ? null : { fluid: id, ...range }),
    saturationTemperatureK(pressurePa) {
      cursor.setPressurePa(pressurePa);
      return cursor.saturationTemperatureK;
    },
    saturationPressurePa: (temperatureK) => saturationPressurePa(id, cursor, range, temperatureK),
  };
}

/** Newton on ln p with the Clapeyron slope, d ln p/dT = (hv - hl)/(T p (vv - vl)), from Trouton's rule of thumb. */
function saturationPressurePa(id: string, cursor: Isobar, range: Refrigerant['range'], temperatureK: number): number {
  cursor.setPressurePa(range.maxPressurePa);
  const highest = cursor.saturationTemperatureK;
  let low = range.minPressurePa;
  let high = range.maxPressurePa;
  cursor.setPressurePa(low);
  const lowest = cursor.saturationTemperatureK;
  if (!(temperatureK >= lowest && temperatureK <= highest)) {
    throw new OutOfRangeError(id, 'saturation temperature', temperatureK, lowest, highest, 'K');
  }
  let pressurePa = Math.sqrt(low * high);
  for (let round = 0; round < 100; round++) {
    cursor.setPressurePa(pressurePa);
    const gap = temperatureK - cursor.saturationTemperatureK;
    if (gap > 0) low = pressurePa;
    else high = pressurePa;
    const latent = cursor.vapourEnthalpyJPerKg - cursor.liquidEnthalpyJPerKg;
    const slope = latent / (cursor.saturationTemperatureK * (cursor.vapourVolumeM3PerKg - cursor.liquidVolumeM3PerKg));
    const next = pressurePa + gap * slope;
    const step = next - pressurePa;
    pressurePa = next > low && next < high ? next : Math.sqrt(low * high);
    if (Math.abs(step) < 1e-12 * pressurePa || high - low < 1e-12 * high) break;
  }
  return pressurePa;
}
