/**
 * The `properties` command without its files: pairs of numbers in, rows of states out, from the tables or from the
 * equation of state itself. Column names end in their unit.
 */
import { createEosStates } from './eos/eosStates';
import { FLUID_DATA } from './eos/fluidData';
import type { FluidState, PropertyPair, StateFinder } from './fluidState';
import { refrigerant } from './fluids';
import type { RefrigerantId } from './refrigerant';
import { createTableStates } from './tableStates';

export type PropertySource = 'table' | 'eos';

/** Names of the two input columns of each pair. */
export const INPUT_COLUMNS: Readonly<Record<PropertyPair, readonly [string, string]>> = {
  'p,h': ['p_Pa', 'h_J_per_kg'],
  'p,T': ['p_Pa', 'T_K'],
  'T,q': ['T_K', 'q'],
  'p,q': ['p_Pa', 'q'],
  'rho,u': ['rho_kg_per_m3', 'u_J_per_kg'],
};

export interface PropertyRow {
  readonly p_Pa: number;
  readonly T_K: number;
  readonly rho_kg_per_m3: number;
  readonly h_J_per_kg: number;
  readonly s_J_per_kgK: number;
  readonly u_J_per_kg: number;
  /** Null (an empty field) outside the dome. */
  readonly q: number | null;
  readonly phase: string;
}

export const OUTPUT_COLUMNS = [
  'p_Pa',
  'T_K',
  'rho_kg_per_m3',
  'h_J_per_kg',
  's_J_per_kgK',
  'u_J_per_kg',
  'q',
  'phase',
] as const satisfies readonly (keyof PropertyRow)[];

export function stateFinder(id: RefrigerantId, source: PropertySource): StateFinder {
  return source === 'eos' ? createEosStates(FLUID_DATA[id]) : createTableStates(refrigerant(id));
}

/** A row for each pair of numbers. Throws `OutOfRangeError` at the first that is out of range. */
export function propertyRows(
  id: RefrigerantId,
  pair: PropertyPair,
  inputs: readonly (readonly [number, number])[],
  source: PropertySource,
): PropertyRow[] {
  const find = stateFinder(id, source);
  return inputs.map(([first, second]) => propertyRow(find(pair, first, second)));
}

export function propertyRow(state: FluidState): PropertyRow {
  return {
    p_Pa: state.pressurePa,
    T_K: state.temperatureK,
    rho_kg_per_m3: state.densityKgPerM3,
    h_J_per_kg: state.enthalpyJPerKg,
    s_J_per_kgK: state.entropyJPerKgK,
    u_J_per_kg: state.internalEnergyJPerKg,
    q: state.quality,
    phase: state.phase,
  };
}
