/**
 * States straight from the equation of state, for any of the five pairs. Slow (tens of microseconds) and exact.
 *
 * Between 0.998 of the critical temperature (about 0.99 of the critical pressure) and the critical point the two phases
 * are not separated: there the one-phase equation is followed.
 */
import { findRoot } from '../../numerics/rootFinding';
import { checkRange } from '../checkRange';
import type { FluidState, Phase, StateFinder } from '../fluidState';
import type { FluidData } from './fluidData';
import { createHelmholtz, type HelmholtzState } from './helmholtz';
import { createSaturationLine, type SaturationLine, type SaturationPoint } from './saturationLine';
import { solvePressureEnthalpy, solvePressureTemperature } from './singlePhase';

const LAST_SATURATION_SHARE = 0.998;
const LOWEST_PRESSURE_PA = 1;
/** Dense enough for any liquid here, as a multiple of the critical density. */
const DENSEST = 3.6;
const TEMPERATURE_TOLERANCE_K = 1e-10;

interface Context {
  readonly data: FluidData;
  readonly line: SaturationLine;
  readonly state: HelmholtzState;
  readonly lastSaturationK: number;
  readonly lastSaturationPa: number;
}

export function createEosStates(data: FluidData): StateFinder {
  const line = createSaturationLine(data);
  const lastSaturationK = LAST_SATURATION_SHARE * data.critical.temperature_K;
  const lastSaturationPa = line.solveTemperature(lastSaturationK).pressurePa;
  const context: Context = { data, line, state: createHelmholtz(data), lastSaturationK, lastSaturationPa };
  return (pair, first, second) => {
    if (pair === 'p,h') return fromPressureEnthalpy(context, first, second);
    if (pair === 'p,T') return fromPressureTemperature(context, first, second);
    if (pair === 'T,q') return fromTemperatureQuality(context, first, second);
    if (pair === 'p,q') return fromPressureQuality(context, first, second);
    return fromDensityEnergy(context, first, second);
  };
}

function fromPressureTemperature(context: Context, pressurePa: number, temperatureK: number): FluidState {
  checkPressure(context.data, pressurePa);
  checkTemperature(context.data, temperatureK);
  solveDensity(context, pressurePa, temperatureK);
  return onePhase(context);
}

function fromPressureEnthalpy(context: Context, pressurePa: number, enthalpy: number): FluidState {
  const { data, line, state } = context;
  checkPressure(data, pressurePa);
  if (pressurePa > context.lastSaturationPa) {
    solveByTemperature(context, (temperatureK) => {
      solveDensity(context, pressurePa, temperatureK);
      return state.enthalpyJPerKg - enthalpy;
    });
    return onePhase(context);
  }
  const point = line.solvePressure(pressurePa);
  const { liquid, vapour } = point;
  const quality = (enthalpy - liquid.enthalpyJPerKg) / (vapour.enthalpyJPerKg - liquid.enthalpyJPerKg);
  if (quality >= 0 && quality <= 1) return twoPhase(context, point, quality);
  const start = quality < 0 ? liquid : vapour;
  solvePressureEnthalpy(state, pressurePa, enthalpy, point.temperatureK, start.densityKgPerM3);
  checkTemperature(data, state.temperatureK);
  return onePhase(context);
}

function fromTemperatureQuality(context: Context, temperatureK: number, quality: number): FluidState {
  checkQuality(context.data, quality);
  const { minTemperature_K: lowest } = context.data.validity;
  checkRange(context.data.id, 'saturation temperature', temperatureK, lowest, context.lastSaturationK, 'K');
  return twoPhase(context, context.line.solveTemperature(temperatureK), quality);
}

function fromPressureQuality(context: Context, pressurePa: number, quality: number): FluidState {
  checkQuality(context.data, quality);
  const { id } = context.data;
  checkRange(id, 'saturation pressure', pressurePa, LOWEST_PRESSURE_PA, context.lastSaturationPa, 'Pa');
  return twoPhase(context, context.line.solvePressure(pressurePa), quality);
}

/** At constant density the internal energy rises with temperature, through the dome as well: one root. */
function fromDensityEnergy(context: Context, density: number, energy: number): FluidState {
  const { data, line, state } = context;
  checkRange(data.id, 'density', density, 1e-6, DENSEST * data.critical.density_kg_per_m3, 'kg/m3');
  let quality: number | null = null;
  solveByTemperature(context, (temperatureK) => {
    quality = qualityAt(context, temperatureK, density);
    if (quality !== null) return mix(line.point, quality, (phase) => phase.internalEnergyJPerKg) - energy;
    state.setTemperatureK(temperatureK);
    state.setDensityKgPerM3(density);
    return state.internalEnergyJPerKg - energy;
  });
  return quality === null ? onePhase(context) : twoPhase(context, line.point, quality);
}

function qualityAt(context: Context, temperatureK: number, density: number): number | null {
  if (temperatureK > context.lastSaturationK) return null;
  const { liquid, vapour } = context.line.solveTemperature(temperatureK);
  const liquidVolume = 1 / liquid.densityKgPerM3;
  const quality = (1 / density - liquidVolume) / (1 / vapour.densityKgPerM3 - liquidVolume);
  return quality >= 0 && quality <= 1 ? quality : null;
}

/** Leaves the context's states where `gap(T)` is 0, for T in the fluid's range. */
function solveByTemperature(context: Context, gap: (temperatureK: number) => number): void {
  const { minTemperature_K: low, maxTemperature_K: high } = context.data.validity;
  const start = Math.max(low, LOWEST_SEARCH_K);
  if (!(gap(start) <= 0)) checkTemperature(context.data, Number.NEGATIVE_INFINITY);
  if (!(gap(high) >= 0)) checkTemperature(context.data, Number.POSITIVE_INFINITY);
  gap(findRoot(gap, start, high, TEMPERATURE_TOLERANCE_K));
}

/** Below this the saturation line is not followed in a search. */
const LOWEST_SEARCH_K = 130;

/** Density at (p, T) into `context.state`, on the stable branch. */
function solveDensity(context: Context, pressurePa: number, temperatureK: number): void {
  const { data, line, state, lastSaturationK } = context;
  if (temperatureK <= lastSaturationK) {
    const { liquid, vapour, pressurePa: saturationPa } = line.solveTemperature(temperatureK);
    const start =
      pressurePa >= saturationPa
        ? liquid.densityKgPerM3
        : (vapour.densityKgPerM3 * pressurePa) / saturationPa;
    solvePressureTemperature(state, pressurePa, temperatureK, start);
    return;
  }
  const critical = data.critical.density_kg_per_m3;
  state.setTemperatureK(temperatureK);
  const density = findRoot(
    (candidate) => {
      state.setDensityKgPerM3(candidate);
      return state.pressurePa - pressurePa;
    },
    (0.1 * pressurePa) / (state.gasConstantJPerKgK * temperatureK),
    DENSEST * critical,
    1e-11 * critical,
  );
  solvePressureTemperature(state, pressurePa, temperatureK, density);
}

function onePhase(context: Context): FluidState {
  const { state, data } = context;
  return {
    pressurePa: state.pressurePa,
    temperatureK: state.temperatureK,
    densityKgPerM3: state.densityKgPerM3,
    enthalpyJPerKg: state.enthalpyJPerKg,
    entropyJPerKgK: state.entropyJPerKgK,
    internalEnergyJPerKg: state.internalEnergyJPerKg,
    quality: null,
    phase: phaseOf(data, state),
  };
}

function phaseOf(data: FluidData, state: HelmholtzState): Phase {
  const { critical } = data;
  if (state.temperatureK > critical.temperature_K) {
    return state.pressurePa > critical.pressure_Pa ? 'supercritical' : 'vapour';
  }
  return state.densityKgPerM3 > critical.density_kg_per_m3 ? 'liquid' : 'vapour';
}

function twoPhase(context: Context, point: SaturationPoint, quality: number): FluidState {
  checkTemperature(context.data, point.temperatureK);
  const volume = mix(point, quality, (phase) => 1 / phase.densityKgPerM3);
  return {
    pressurePa: point.pressurePa,
    temperatureK: point.temperatureK,
    densityKgPerM3: 1 / volume,
    enthalpyJPerKg: mix(point, quality, (phase) => phase.enthalpyJPerKg),
    entropyJPerKgK: mix(point, quality, (phase) => phase.entropyJPerKgK),
    internalEnergyJPerKg: mix(point, quality, (phase) => phase.internalEnergyJPerKg),
    quality,
    phase: 'twoPhase',
  };
}

function mix(point: SaturationPoint, quality: number, of: (phase: HelmholtzState) => number): number {
  return of(point.liquid) * (1 - quality) + of(point.vapour) * quality;
}

function checkPressure(data: FluidData, pressurePa: number): void {
  checkRange(data.id, 'pressure', pressurePa, LOWEST_PRESSURE_PA, data.validity.maxPressure_Pa, 'Pa');
}

function checkTemperature(data: FluidData, temperatureK: number): void {
  const { minTemperature_K: low, maxTemperature_K: high } = data.validity;
  checkRange(data.id, 'temperature', temperatureK, low, high, 'K');
}

function checkQuality(data: FluidData, quality: number): void {
  checkRange(data.id, 'quality', quality, 0, 1, 'kg/kg');
}
