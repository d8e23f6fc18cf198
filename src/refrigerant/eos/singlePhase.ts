/**
 * States of one phase from other pairs than temperature and density, by Newton's method from a starting point that
 * picks the phase: (p, T) on ln(density), (p, h) on density and temperature together.
 */
import { exp } from '../../numerics/exp';
import type { HelmholtzState } from './helmholtz';
import { NoConvergenceError } from './saturationLine';

const TOLERANCE = 1e-13;
const MOST_ROUNDS = 100;

/** Leaves `state` at (p, T), on the branch of `startDensity`. */
export function solvePressureTemperature(
  state: HelmholtzState,
  pressurePa: number,
  temperatureK: number,
  startDensity: number,
): void {
  state.setTemperatureK(temperatureK);
  let density = startDensity;
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    state.setDensityKgPerM3(density);
    const gap = pressurePa - state.pressurePa;
    const step = gap / (density * state.pressureByDensity);
    const size = Math.abs(step);
    if (size < TOLERANCE || (size < 1e-10 && size >= best)) return;
    best = size;
    density *= exp(step > 0.3 ? 0.3 : step < -0.3 ? -0.3 : step);
  }
  throw new NoConvergenceError(`${state.data.id}: no density found at ${pressurePa} Pa, ${temperatureK} K`);
}

/** Leaves `state` at (p, h), starting from a state of the same phase. */
export function solvePressureEnthalpy(
  state: HelmholtzState,
  pressurePa: number,
  enthalpyJPerKg: number,
  startTemperatureK: number,
  startDensity: number,
): void {
  let temperature = startTemperatureK;
  let density = startDensity;
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    state.setTemperatureK(temperature);
    state.setDensityKgPerM3(density);
    const { pressureByDensity, pressureByTemperature } = state;
    const enthalpyByDensity = (pressureByDensity - (temperature * pressureByTemperature) / density) / density;
    const enthalpyByTemperature = state.heatCapacityVolumeJPerKgK + pressureByTemperature / density;
    const pressureGap = pressurePa - state.pressurePa;
    const enthalpyGap = enthalpyJPerKg - state.enthalpyJPerKg;
    const determinant = pressureByDensity * enthalpyByTemperature - pressureByTemperature * enthalpyByDensity;
    const densityStep =
      (pressureGap * enthalpyByTemperature - pressureByTemperature * enthalpyGap) / determinant;
    const temperatureStep = (pressureByDensity * enthalpyGap - enthalpyByDensity * pressureGap) / determinant;
    const size = Math.max(Math.abs(densityStep) / density, Math.abs(temperatureStep) / temperature);
    if (size < TOLERANCE || (size < 1e-10 && size >= best)) return;
    best = size;
    const share = size > 0.2 ? 0.2 / size : 1;
    density += share * densityStep;
    temperature += share * temperatureStep;
  }
  throw new NoConvergenceError(
    `${state.data.id}: no state found at ${pressurePa} Pa, ${enthalpyJPerKg} J/kg`,
  );
}
