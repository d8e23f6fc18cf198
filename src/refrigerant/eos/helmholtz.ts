/**
 * Thermodynamic state from temperature and density by a Helmholtz-energy equation of state:
 *
 *   p = rho R T (1 + delta ar_delta)     u = R T tau (a0_tau + ar_tau)     h = u + p/rho
 *   s = R (tau (a0_tau + ar_tau) - a0 - ar)
 *
 * (for example Span, Multiparameter Equations of State, Springer 2000, table 3.9). Mass basis. One mutable state is
 * kept: set a temperature, then any number of densities.
 */
import { ln } from '../../numerics/ln';
import type { FluidData } from './fluidData';
import { evaluateIdeal, type IdealPart } from './idealPart';
import { createResidual } from './residualPart';

export interface HelmholtzState {
  readonly data: FluidData;
  readonly gasConstantJPerKgK: number;
  setTemperatureK(temperatureK: number): void;
  setDensityKgPerM3(densityKgPerM3: number): void;
  temperatureK: number;
  densityKgPerM3: number;
  pressurePa: number;
  /** dp/drho at constant temperature, Pa m3/kg. */
  pressureByDensity: number;
  /** dp/dT at constant density, Pa/K. */
  pressureByTemperature: number;
  internalEnergyJPerKg: number;
  enthalpyJPerKg: number;
  entropyJPerKgK: number;
  /** Gibbs energy, J/kg. */
  gibbsJPerKg: number;
  /** Heat capacity at constant volume, J/(kg K). */
  heatCapacityVolumeJPerKgK: number;
  heatCapacityPressureJPerKgK(): number;
  soundSpeedMPerS(): number;
}

export function createHelmholtz(data: FluidData): HelmholtzState {
  const gasConstant = data.gasConstant_J_per_molK / data.molarMass_kg_per_mol;
  const reducingDensity = data.reducing.density_mol_per_m3 * data.molarMass_kg_per_mol;
  const ideal: IdealPart = { value: 0, tauFirst: 0, tauSecond: 0 };
  const residual = createResidual(data);

  const state: HelmholtzState = {
    data,
    gasConstantJPerKgK: gasConstant,
    temperatureK: 0,
    densityKgPerM3: 0,
    pressurePa: 0,
    pressureByDensity: 0,
    pressureByTemperature: 0,
    internalEnergyJPerKg: 0,
    enthalpyJPerKg: 0,
    entropyJPerKgK: 0,
    gibbsJPerKg: 0,
    heatCapacityVolumeJPerKgK: 0,
    setTemperatureK(temperatureK) {
      const tau = data.reducing.temperature_K / temperatureK;
      state.temperatureK = temperatureK;
      evaluateIdeal(data, tau, ideal);
      residual.setTau(tau);
    },
    setDensityKgPerM3(densityKgPerM3) {
      const delta = densityKgPerM3 / reducingDensity;
      residual.evaluate(delta);
      const rt = gasConstant * state.temperatureK;
      const tauFirst = ideal.tauFirst + residual.tauFirst;
      const helmholtz = ideal.value + ln(delta) + residual.value;
      state.densityKgPerM3 = densityKgPerM3;
      state.pressurePa = densityKgPerM3 * rt * (1 + residual.deltaFirst);
      state.pressureByDensity = rt * (1 + 2 * residual.deltaFirst + residual.deltaSecond);
      state.pressureByTemperature = densityKgPerM3 * gasConstant * (1 + residual.deltaFirst - residual.mixed);
      state.internalEnergyJPerKg = rt * tauFirst;
      state.enthalpyJPerKg = rt * (tauFirst + 1 + residual.deltaFirst);
      state.entropyJPerKgK = gasConstant * (tauFirst - helmholtz);
      state.gibbsJPerKg = rt * (helmholtz + 1 + residual.deltaFirst);
      state.heatCapacityVolumeJPerKgK = -gasConstant * (ideal.tauSecond + residual.tauSecond);
    },
    heatCapacityPressureJPerKgK() {
      const { densityKgPerM3: density, pressureByTemperature: byTemperature } = state;
      const extra =
        (state.temperatureK * byTemperature * byTemperature) / (density * density * state.pressureByDensity);
      return state.heatCapacityVolumeJPerKgK + extra;
    },
    soundSpeedMPerS() {
      return Math.sqrt(
        (state.pressureByDensity * state.heatCapacityPressureJPerKgK()) / state.heatCapacityVolumeJPerKgK,
      );
    },
  };
  return state;
}
