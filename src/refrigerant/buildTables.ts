/**
 * Builds the committed table modules, one a fluid, from the coefficients in shared/refrigerants. Same bytes every time;
 * a test builds them again and compares.
 */
import { buildTableData } from './buildTableData';
import { FLUID_DATA } from './eos/fluidData';
import type { RefrigerantId } from './refrigerant';
import { encodeTable } from './tableCodec';

export interface BuiltFile {
  /** From the project's top folder. */
  readonly path: string;
  readonly text: string;
}

const FILES: readonly (readonly [RefrigerantId, string])[] = [
  ['R-134a', 'r134a'],
  ['R-12', 'r12'],
  ['R-1234yf', 'r1234yf'],
];

export function buildTables(): BuiltFile[] {
  return FILES.map(([id, name]) => ({ path: `src/refrigerant/tables/${name}.ts`, text: tableModule(id) }));
}

function tableModule(id: RefrigerantId): string {
  const data = FLUID_DATA[id];
  const tables = buildTableData(data);
  return `/** Run-time tables of ${id}, built by the build-tables command from shared/refrigerants. Not for editing by hand. */
import type { StoredTable } from '../tableCodec';

export const table: StoredTable = {
  fluid: '${id}',
  molarMassKgPerMol: ${data.molarMass_kg_per_mol},
  gasConstantJPerKgK: ${data.gasConstant_J_per_molK / data.molarMass_kg_per_mol},
  criticalPressurePa: ${data.critical.pressure_Pa},
  criticalTemperatureK: ${data.critical.temperature_K},
  minTemperatureK: ${data.validity.minTemperature_K},
  maxTemperatureK: ${data.validity.maxTemperature_K},
  topPressurePa: ${tables.topPressurePa},
  base64:
    '${encodeTable(tables)}',
};
`;
}
