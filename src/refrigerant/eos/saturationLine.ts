/**
 * Vapour-liquid equilibrium of one equation of state: equal pressure and equal Gibbs energy of the two phases at one
 * temperature (Maxwell's criterion), by Newton's method on both densities (the scheme of Akasaka, J. Thermal Sci. Tech.
 * 3 (2008) 442). By pressure: Newton on ln p over 1/T with the Clapeyron slope.
 */
import { exp } from '../../numerics/exp';
import { ln } from '../../numerics/ln';
import type { FluidData } from './fluidData';
import { createHelmholtz, type HelmholtzState } from './helmholtz';

export interface SaturationPoint {
  temperatureK: number;
  pressurePa: number;
  liquid: HelmholtzState;
  vapour: HelmholtzState;
}

export interface SaturationLine {
  /** The point last solved; both phases are full states. Overwritten by the next call. */
  readonly point: SaturationPoint;
  solveTemperature(temperatureK: number): SaturationPoint;
  solvePressure(pressurePa: number): SaturationPoint;
}

const RELATIVE_TOLERANCE = 1e-13;
const MOST_ROUNDS = 60;

export class NoConvergenceError extends Error {
  override readonly name = 'NoConvergenceError';
}

export function createSaturationLine(data: FluidData): SaturationLine {
  const liquid = createHelmholtz(data);
  const vapour = createHelmholtz(data);
  const point: SaturationPoint = { temperatureK: 0, pressurePa: 0, liquid, vapour };
  return {
    point,
    solveTemperature: (temperatureK) => solveAtTemperature(data, point, temperatureK),
    solvePressure: (pressurePa) => solveAtPressure(data, point, pressurePa),
  };
}

function solveAtTemperature(data: FluidData, point: SaturationPoint, temperatureK: number): SaturationPoint {
  const { liquid, vapour } = point;
  const { critical, saturationGuess } = data;
  const theta = 1 - temperatureK / critical.temperature_K;
  let liquidDensity = critical.density_kg_per_m3 * (1 + guessSum(saturationGuess.liquidDensity, theta));
  let vapourDensity = critical.density_kg_per_m3 * exp(guessSum(saturationGuess.vapourDensity, theta));
  liquid.setTemperatureK(temperatureK);
  vapour.setTemperatureK(temperatureK);
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    liquid.setDensityKgPerM3(liquidDensity);
    vapour.setDensityKgPerM3(vapourDensity);
    // Unknowns: steps of both densities, from dp = pressureByDensity drho and dg = dp / rho.
    const pressureGap = vapour.pressurePa - liquid.pressurePa;
    const gibbsGap = vapour.gibbsJPerKg - liquid.gibbsJPerKg;
    const pressureStep = (gibbsGap - pressureGap / vapourDensity) / (1 / liquidDensity - 1 / vapourDensity);
    const liquidStep = pressureStep / liquid.pressureByDensity;
    const vapourStep = (pressureStep - pressureGap) / vapour.pressureByDensity;
    const error = Math.abs(liquidStep) / liquidDensity + Math.abs(vapourStep) / vapourDensity;
    if (error < RELATIVE_TOLERANCE || (error < 1e-9 && error >= best)) break;
    if (round === MOST_ROUNDS - 1)
      throw new NoConvergenceError(`${data.id}: no phase equilibrium found at ${temperatureK} K`);
    best = error;
    const share = error > 0.5 ? 0.5 / error : 1;
    liquidDensity += share * liquidStep;
    vapourDensity += share * vapourStep;
  }
  point.temperatureK = temperatureK;
  point.pressurePa = vapour.pressurePa;
  return point;
}

function solveAtPressure(data: FluidData, point: SaturationPoint, pressurePa: number): SaturationPoint {
  let inverse = 1 / guessTemperatureK(data, pressurePa);
  const target = ln(pressurePa);
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    solveAtTemperature(data, point, 1 / inverse);
    const gap = target - ln(point.pressurePa);
    if (Math.abs(gap) < 1e-14 || (Math.abs(gap) < 1e-11 && Math.abs(gap) >= best)) return point;
    best = Math.abs(gap);
    // d ln p / d(1/T) = -T dh / (p dv)
    const volumeGap = 1 / point.vapour.densityKgPerM3 - 1 / point.liquid.densityKgPerM3;
    const heat = point.vapour.enthalpyJPerKg - point.liquid.enthalpyJPerKg;
    inverse -= (gap * point.pressurePa * volumeGap) / (point.temperatureK * heat);
  }
  throw new NoConvergenceError(`${data.id}: no saturation temperature found at ${pressurePa} Pa`);
}

function guessTemperatureK(data: FluidData, pressurePa: number): number {
  const { temperature_K: critical, pressure_Pa: criticalPressure } = data.critical;
  const target = ln(pressurePa / criticalPressure);
  let low = 0.3 * critical;
  let high = critical;
  for (let round = 0; round < 40; round++) {
    const middle = 0.5 * (low + high);
    const guess = (critical / middle) * guessSum(data.saturationGuess.pressure, 1 - middle / critical);
    if (guess < target) low = middle;
    else high = middle;
  }
  return Math.min(0.5 * (low + high), 0.9985 * critical);
}

function guessSum(terms: readonly (readonly number[])[], theta: number): number {
  const logOfTheta = ln(theta);
  let sum = 0;
  for (const [n, k] of terms) sum += n * exp(k * logOfTheta);
  return sum;
}
