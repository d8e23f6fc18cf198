/** The refrigerants of the program by id, each with its tables made ready once. */
import { buildTableData } from './buildTableData';
import { FLUID_DATA } from './eos/fluidData';
import { findRoot } from '../numerics/rootFinding';
import { OutOfRangeError } from './outOfRangeError';
import type { Isobar, Refrigerant, RefrigerantId } from './refrigerant';
import { TableIsobar } from './tableIsobar';
import { makeTableSet } from './tableSet';

export const REFRIGERANT_IDS: readonly RefrigerantId[] = ['R-134a', 'R-12', 'R-1234yf'];

const MIN_PRESSURE_PA = 20;
const MAX_SHARE_OF_CRITICAL = 0.9;
const MIN_TEMPERATURE_K = 213.15;

const made = new Map<RefrigerantId, Refrigerant>();

/** The refrigerant of that id. The first call of each takes a few milliseconds. */
export function refrigerant(id: RefrigerantId): Refrigerant {
  const known = made.get(id);
  if (known !== undefined) return known;
  const fresh = makeRefrigerant(id);
  made.set(id, fresh);
  return fresh;
}

function makeRefrigerant(id: RefrigerantId): Refrigerant {
  const data = FLUID_DATA[id];
  const tables = makeTableSet(buildTableData(data));
  const range = {
    minPressurePa: MIN_PRESSURE_PA,
    maxPressurePa: MAX_SHARE_OF_CRITICAL * data.critical.pressure_Pa,
    minTemperatureK: MIN_TEMPERATURE_K,
    maxTemperatureK: data.validity.maxTemperature_K,
  };
  const limits = { fluid: id, ...range };
  const cursor: Isobar = new TableIsobar(tables, null);
  cursor.setPressurePa(range.maxPressurePa);
  const highest = cursor.saturationTemperatureK;
  cursor.setPressurePa(range.minPressurePa);
  const lowest = cursor.saturationTemperatureK;

  function saturationTemperatureK(pressurePa: number): number {
    if (!(pressurePa >= range.minPressurePa && pressurePa <= range.maxPressurePa)) {
      throw new OutOfRangeError(id, 'pressure', pressurePa, range.minPressurePa, range.maxPressurePa, 'Pa');
    }
    cursor.setPressurePa(pressurePa);
    return cursor.saturationTemperatureK;
  }
  return {
    id,
    molarMassKgPerMol: data.molarMass_kg_per_mol,
    criticalPressurePa: data.critical.pressure_Pa,
    criticalTemperatureK: data.critical.temperature_K,
    gasConstantJPerKgK: data.gasConstant_J_per_molK / data.molarMass_kg_per_mol,
    range,
    isobar: (outside) => new TableIsobar(tables, outside === 'continue' ? null : limits),
    saturationTemperatureK,
    saturationPressurePa(temperatureK) {
      if (!(temperatureK >= lowest && temperatureK <= highest)) {
        throw new OutOfRangeError(id, 'saturation temperature', temperatureK, lowest, highest, 'K');
      }
      return findRoot((p) => saturationTemperatureK(p) - temperatureK, range.minPressurePa, range.maxPressurePa, 1e-6);
    },
  };
}
