/** The refrigerants of the program by id, each with its tables made ready once. */
import type { Refrigerant, RefrigerantId } from './refrigerant';
import { createSaturationLookUp } from './saturationLookUp';
import { decodeTable, type StoredTable } from './tableCodec';
import { TableIsobar } from './tableIsobar';
import { makeTableSet } from './tableSet';
import { table as r12 } from './tables/r12';
import { table as r134a } from './tables/r134a';
import { table as r1234yf } from './tables/r1234yf';

const STORED: Readonly<Record<RefrigerantId, StoredTable>> = {
  'R-134a': r134a,
  'R-12': r12,
  'R-1234yf': r1234yf,
};

export const REFRIGERANT_IDS: readonly RefrigerantId[] = ['R-134a', 'R-12', 'R-1234yf'];

/** Range in which the tables answer with their accuracy (T 0.02 %, density 0.05 %). */
const MIN_PRESSURE_PA = 20;
const MAX_SHARE_OF_CRITICAL = 0.96;
const MIN_TEMPERATURE_K = 200;

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
  const limits = {
    fluid: id,
    minPressurePa: MIN_PRESSURE_PA,
    maxPressurePa: MAX_SHARE_OF_CRITICAL * stored.criticalPressurePa,
  };
  const line = createSaturationLookUp(id, stored, new TableIsobar(tables, null), MIN_PRESSURE_PA);
  return {
    id,
    molarMassKgPerMol: stored.molarMassKgPerMol,
    criticalPressurePa: stored.criticalPressurePa,
    criticalTemperatureK: stored.criticalTemperatureK,
    gasConstantJPerKgK: stored.gasConstantJPerKgK,
    range: {
      minPressurePa: limits.minPressurePa,
      maxPressurePa: limits.maxPressurePa,
      minTemperatureK: MIN_TEMPERATURE_K,
      maxTemperatureK: stored.maxTemperatureK,
      minSaturationTemperatureK: line.minTemperatureK,
    },
    isobar: (outside) => new TableIsobar(tables, outside === 'continue' ? null : limits),
    saturationTemperatureK: line.temperatureK,
    saturationPressurePa: line.pressurePa,
  };
}
