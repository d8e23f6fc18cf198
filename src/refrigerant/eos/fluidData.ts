/**
 * Coefficients of the published equations of state, read from shared/refrigerants, where each stands with its citation,
 * units and validity.
 */
import r12 from '../../../shared/refrigerants/r12.json';
import r134a from '../../../shared/refrigerants/r134a.json';
import r1234yf from '../../../shared/refrigerants/r1234yf.json';
import type { RefrigerantId } from '../refrigerant';

export interface FluidData {
  readonly id: string;
  readonly molarMass_kg_per_mol: number;
  readonly gasConstant_J_per_molK: number;
  readonly reducing: { readonly temperature_K: number; readonly density_mol_per_m3: number };
  readonly critical: {
    readonly temperature_K: number;
    readonly pressure_Pa: number;
    readonly density_kg_per_m3: number;
  };
  readonly validity: {
    readonly minTemperature_K: number;
    readonly maxTemperature_K: number;
    readonly maxPressure_Pa: number;
  };
  readonly ideal: {
    readonly lead: readonly number[];
    readonly logTau: number;
    readonly power: readonly (readonly number[])[];
    readonly einstein: readonly (readonly number[])[];
  };
  readonly residual: {
    readonly power: readonly (readonly number[])[];
    readonly gauss: readonly (readonly number[])[];
  };
  readonly referenceShift: readonly number[];
  readonly saturationGuess: {
    readonly pressure: readonly (readonly number[])[];
    readonly liquidDensity: readonly (readonly number[])[];
    readonly vapourDensity: readonly (readonly number[])[];
  };
}

export const FLUID_DATA: Readonly<Record<RefrigerantId, FluidData>> = {
  'R-134a': r134a,
  'R-12': r12,
  'R-1234yf': r1234yf,
};
