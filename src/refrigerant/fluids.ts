/**
 * The refrigerants of the program by id, each with its tables made ready once. Tables come as modules: a page loads the
 * one it needs with `loadRefrigerant`; the command line and the tests hold them all (allFluids.ts).
 */
import type { Refrigerant, RefrigerantId } from './refrigerant';
import { createSaturationLookUp } from './saturationLookUp';
import { decodeTable, type StoredTable } from './tableCodec';
import { TableIsobar } from './tableIsobar';
import { makeTableSet } from './tableSet';

const LOADERS: Readonly<Record<RefrigerantId, () => Promise<{ readonly table: StoredTable }>>> = {
  'R-134a': () => import('./tables/r134a'),
  'R-12': () => import('./tables/r12'),
  'R-1234yf': () => import('./tables/r1234yf'),
};

export const REFRIGERANT_IDS: readonly RefrigerantId[] = ['R-134a', 'R-12', 'R-1234yf'];

/** Range in which the tables answer with their accuracy (T 0.02 %, density 0.05 %). */
const MIN_PRESSURE_PA = 20;
const MAX_SHARE_OF_CRITICAL = 0.96;
const MIN_TEMPERATURE_K = 200;

const stored = new Map<RefrigerantId, StoredTable>();
const made = new Map<RefrigerantId, Refrigerant>();

/** Fetches the tables of one refrigerant; after it `refrigerant(id)` answers. */
export async function loadRefrigerant(id: RefrigerantId): Promise<void> {
  if (!stored.has(id)) keepTable(id, (await LOADERS[id]()).table);
}

export function keepTable(id: RefrigerantId, table: StoredTable): void {
  stored.set(id, table);
}

/**
 * The refrigerant of that id. The first call of each takes some milliseconds, later ones nothing. Throws `RangeError`
 * where its tables have not been loaded.
 */
export function refrigerant(id: RefrigerantId): Refrigerant {
  const known = made.get(id);
  if (known !== undefined) return known;
  const table = stored.get(id);
  if (table === undefined) throw new RangeError(`the tables of ${id} are not loaded`);
  const fresh = makeRefrigerant(id, table);
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
