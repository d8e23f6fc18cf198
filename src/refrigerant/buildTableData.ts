/**
 * Fills the run-time tables of one fluid from its equation of state: the saturation line by pressure, then for every row
 * the states at even distances (in octaves) from the dome, marching outwards so that each start is near its answer.
 */
import type { FluidData } from './eos/fluidData';
import { createHelmholtz, type HelmholtzState } from './eos/helmholtz';
import { createSaturationLine, type SaturationLine } from './eos/saturationLine';
import { solvePressureEnthalpy, solvePressureTemperature } from './eos/singlePhase';
import type { PatchData, SaturationData, TableData } from './tableData';
import {
  COLUMN_NODES,
  COLUMN_UNIT_J_PER_KG,
  ROW_NODES,
  SATURATION_NODES,
  TOP_REDUCED,
  TOP_ROW,
  TOP_SHARE_OF_CRITICAL,
} from './tableGrid';

/** Colder liquid than this is not asked of the equation but continued in a straight line. */
const COLDEST_LIQUID_K = 130;

export function buildTableData(data: FluidData): TableData {
  const topPressurePa = TOP_SHARE_OF_CRITICAL * data.critical.pressure_Pa;
  const line = createSaturationLine(data);
  return {
    topPressurePa,
    saturation: buildSaturation(line, topPressurePa),
    liquid: buildPatch(data, line, topPressurePa, -1),
    vapour: buildPatch(data, line, topPressurePa, 1),
  };
}

function buildSaturation(line: SaturationLine, topPressurePa: number): SaturationData {
  const column = (): Float64Array => new Float64Array(SATURATION_NODES.length);
  const out = {
    temperatureK: column(),
    liquidEnthalpy: column(),
    vapourEnthalpy: column(),
    liquidVolume: column(),
    vapourProduct: column(),
    liquidEntropy: column(),
  };
  for (let row = 0; row < SATURATION_NODES.length; row++) {
    const pressurePa = (SATURATION_NODES[row] * topPressurePa) / TOP_REDUCED;
    const { liquid, vapour, temperatureK } = line.solvePressure(pressurePa);
    out.temperatureK[row] = temperatureK;
    out.liquidEnthalpy[row] = liquid.enthalpyJPerKg;
    out.vapourEnthalpy[row] = vapour.enthalpyJPerKg;
    out.liquidVolume[row] = 1 / liquid.densityKgPerM3;
    out.vapourProduct[row] = pressurePa / vapour.densityKgPerM3;
    out.liquidEntropy[row] = liquid.entropyJPerKgK;
  }
  return out;
}

/** `side` is -1 for liquid, away from the dome towards lower enthalpy, and 1 for vapour. */
function buildPatch(data: FluidData, line: SaturationLine, topPressurePa: number, side: -1 | 1): PatchData {
  const columns = COLUMN_NODES.length;
  const size = ROW_NODES.length * columns;
  const out = {
    temperature: new Float32Array(size),
    volume: new Float32Array(size),
    entropy: new Float32Array(size),
  };
  const state = createHelmholtz(data);
  const row = new Float64Array(3 * columns);
  let topTemperature = 0;
  let topDensity = 0;
  for (let i = 0; i < ROW_NODES.length; i++) {
    const pressurePa = (ROW_NODES[i] * topPressurePa) / TOP_REDUCED;
    const edge = line.solvePressure(Math.min(pressurePa, topPressurePa));
    const phase = side < 0 ? edge.liquid : edge.vapour;
    if (i <= TOP_ROW + 1) {
      topTemperature = edge.temperatureK;
      topDensity = phase.densityKgPerM3;
    }
    // Over the top each row starts from the edge state of the row before.
    solvePressureEnthalpy(state, pressurePa, phase.enthalpyJPerKg, topTemperature, topDensity);
    topTemperature = state.temperatureK;
    topDensity = state.densityKgPerM3;
    marchRow(state, pressurePa, phase, side, row);
    const own = volumeOf(side, Math.min(pressurePa, topPressurePa), phase);
    for (let j = 0; j < columns; j++) {
      const at = i * columns + j;
      const onEdge = i <= TOP_ROW + 1 && j === 0;
      out.temperature[at] = onEdge ? 0 : row[3 * j] - edge.temperatureK;
      out.volume[at] = onEdge ? 0 : row[3 * j + 1] - own;
      out.entropy[at] = onEdge ? 0 : row[3 * j + 2] - phase.entropyJPerKgK;
    }
  }
  return out;
}

/** T, volume and entropy along one row, from the state given outwards. */
function marchRow(
  state: HelmholtzState,
  pressurePa: number,
  edge: HelmholtzState,
  side: -1 | 1,
  row: Float64Array,
): void {
  const edgeEnthalpy = edge.enthalpyJPerKg;
  const last = new Float64Array(3);
  let bend: Float64Array | null = null;
  for (let j = 0; j < COLUMN_NODES.length; j++) {
    const enthalpy = edgeEnthalpy + side * (COLUMN_NODES[j] - 1) * COLUMN_UNIT_J_PER_KG;
    if (j > 0 && bend === null) approach(state, pressurePa, enthalpy);
    row[3 * j] = state.temperatureK;
    row[3 * j + 1] = volumeOf(side, pressurePa, state);
    row[3 * j + 2] = state.entropyJPerKgK;
    const left = enthalpy - state.enthalpyJPerKg;
    if (Math.abs(left) < 1e-3) continue;
    // Colder than the coldest liquid: on from the last state by its slopes and their change.
    if (bend === null) bend = bendOf(state, pressurePa, last);
    for (let k = 0; k < 3; k++) row[3 * j + k] += left * (last[k] + 0.5 * left * bend[k]);
  }
}

const APPROACH_STEPS = 4;
const BEND_STEP_K = 5;

/** To (p, h) by a few steps; towards the cold not past the first step below the coldest liquid. */
function approach(state: HelmholtzState, pressurePa: number, enthalpy: number): void {
  const start = state.enthalpyJPerKg;
  for (let i = 1; i <= APPROACH_STEPS; i++) {
    const next = start + ((enthalpy - start) * i) / APPROACH_STEPS;
    if (next < start && state.temperatureK < COLDEST_LIQUID_K) return;
    solvePressureEnthalpy(state, pressurePa, next, state.temperatureK, state.densityKgPerM3);
  }
}

/** Second derivatives of T, v, s by h at constant pressure in cold liquid; fills `slopes` with the first. */
function bendOf(state: HelmholtzState, pressurePa: number, slopes: Float64Array): Float64Array {
  const { temperatureK, densityKgPerM3, enthalpyJPerKg } = state;
  solvePressureTemperature(state, pressurePa, temperatureK + BEND_STEP_K, densityKgPerM3);
  const warmer = slopesOf(state);
  const distance = state.enthalpyJPerKg - enthalpyJPerKg;
  solvePressureTemperature(state, pressurePa, temperatureK, densityKgPerM3);
  slopes.set(slopesOf(state));
  return slopes.map((slope, k) => (warmer[k] - slope) / distance);
}

/** dT/dh, dv/dh, ds/dh at constant pressure. */
function slopesOf(state: HelmholtzState): Float64Array {
  const heatCapacity = state.heatCapacityPressureJPerKgK();
  const { densityKgPerM3: density } = state;
  const expansion = state.pressureByTemperature / (density * density * state.pressureByDensity);
  return Float64Array.of(1 / heatCapacity, expansion / heatCapacity, 1 / state.temperatureK);
}

function volumeOf(side: -1 | 1, pressurePa: number, state: HelmholtzState): number {
  return side < 0 ? 1 / state.densityKgPerM3 : pressurePa / state.densityKgPerM3;
}
