/** Fills the run-time tables of one fluid from its equation of state. Takes well under a second. */
import type { FluidData } from './eos/fluidData';
import { createHelmholtz } from './eos/helmholtz';
import { createSaturationLine, type SaturationLine } from './eos/saturationLine';
import { solvePressureEnthalpy } from './eos/singlePhase';
import type { TableData } from './tableData';
import {
  LIQUID_CELLS,
  PRESSURE_NODES,
  SUPERHEAT_NODES,
  SUPERHEAT_UNIT_J_PER_KG,
  TOP_REDUCED,
  TOP_SHARE_OF_CRITICAL,
} from './tableGrid';

/** Pressures above saturation through which the liquid's bend is fitted, Pa. */
const NEAR_STEP_PA = 1e6;
const FAR_STEP_PA = 4e6;

export function buildTableData(data: FluidData): TableData {
  const topPressurePa = TOP_SHARE_OF_CRITICAL * data.critical.pressure_Pa;
  const line = createSaturationLine(data);
  const saturation = buildSaturation(line, topPressurePa);
  return { topPressurePa, saturation, vapour: buildVapour(data, line, topPressurePa), liquid: buildLiquid(data, line, saturation) };
}

function buildSaturation(line: SaturationLine, topPressurePa: number): TableData['saturation'] {
  const count = PRESSURE_NODES.length;
  const column = (): Float64Array => new Float64Array(count);
  const out = {
    temperatureK: column(),
    liquidEnthalpy: column(),
    vapourEnthalpy: column(),
    liquidVolume: column(),
    vapourProduct: column(),
    liquidEntropy: column(),
  };
  for (let i = 0; i < count; i++) {
    const pressurePa = (PRESSURE_NODES[i] * topPressurePa) / TOP_REDUCED;
    const { liquid, vapour, temperatureK } = line.solvePressure(pressurePa);
    out.temperatureK[i] = temperatureK;
    out.liquidEnthalpy[i] = liquid.enthalpyJPerKg;
    out.vapourEnthalpy[i] = vapour.enthalpyJPerKg;
    out.liquidVolume[i] = 1 / liquid.densityKgPerM3;
    out.vapourProduct[i] = pressurePa / vapour.densityKgPerM3;
    out.liquidEntropy[i] = liquid.entropyJPerKgK;
  }
  return out;
}

function buildVapour(data: FluidData, line: SaturationLine, topPressurePa: number): TableData['vapour'] {
  const columns = SUPERHEAT_NODES.length;
  const size = PRESSURE_NODES.length * columns;
  const out = { temperatureK: new Float32Array(size), product: new Float32Array(size), entropyRise: new Float32Array(size) };
  const state = createHelmholtz(data);
  for (let i = 0; i < PRESSURE_NODES.length; i++) {
    const pressurePa = (PRESSURE_NODES[i] * topPressurePa) / TOP_REDUCED;
    const { vapour, temperatureK } = line.solvePressure(pressurePa);
    state.setTemperatureK(temperatureK);
    state.setDensityKgPerM3(vapour.densityKgPerM3);
    for (let j = 0; j < columns; j++) {
      const enthalpy = vapour.enthalpyJPerKg + (SUPERHEAT_NODES[j] - 1) * SUPERHEAT_UNIT_J_PER_KG;
      if (j > 0) solvePressureEnthalpy(state, pressurePa, enthalpy, state.temperatureK, state.densityKgPerM3);
      out.temperatureK[i * columns + j] = state.temperatureK;
      out.product[i * columns + j] = pressurePa / state.densityKgPerM3;
      out.entropyRise[i * columns + j] = state.entropyJPerKgK - vapour.entropyJPerKgK;
    }
  }
  return out;
}

function buildLiquid(data: FluidData, line: SaturationLine, saturation: TableData['saturation']): TableData['liquid'] {
  const count = LIQUID_CELLS + 1;
  const column = (): Float64Array => new Float64Array(count);
  const out = {
    firstEnthalpy: saturation.liquidEnthalpy[0],
    lastEnthalpy: saturation.liquidEnthalpy[PRESSURE_NODES.length - 1],
    temperatureK: column(),
    pressurePa: column(),
    volume: column(),
    entropy: column(),
    temperatureRise: column(),
    temperatureBend: column(),
    volumeRise: column(),
    volumeBend: column(),
  };
  const state = createHelmholtz(data);
  const steps = [NEAR_STEP_PA, FAR_STEP_PA];
  for (let i = 0; i < count; i++) {
    const enthalpy = out.firstEnthalpy + ((out.lastEnthalpy - out.firstEnthalpy) * i) / LIQUID_CELLS;
    const { liquid, temperatureK, pressurePa } = solveLiquidEnthalpy(line, enthalpy, saturation);
    const volume = 1 / liquid.densityKgPerM3;
    out.temperatureK[i] = temperatureK;
    out.pressurePa[i] = pressurePa;
    out.volume[i] = volume;
    out.entropy[i] = liquid.entropyJPerKgK;
    let temperature = temperatureK;
    let density = liquid.densityKgPerM3;
    const rises = steps.map((step) => {
      solvePressureEnthalpy(state, pressurePa + step, enthalpy, temperature, density);
      temperature = state.temperatureK;
      density = state.densityKgPerM3;
      return { temperature: (temperature - temperatureK) / step, volume: (1 / density - volume) / step };
    });
    const temperatureBend = (rises[1].temperature - rises[0].temperature) / (FAR_STEP_PA - NEAR_STEP_PA);
    const volumeFit = fitBend(rises[0].volume, rises[1].volume);
    out.temperatureRise[i] = rises[0].temperature - NEAR_STEP_PA * temperatureBend;
    out.temperatureBend[i] = temperatureBend;
    out.volumeRise[i] = volumeFit.rise;
    out.volumeBend[i] = volumeFit.bend;
  }
  return out;
}

/** a and b of a/(1 + b dp) through its values at the two steps. */
function fitBend(near: number, far: number): { rise: number; bend: number } {
  const bend = (near - far) / (far * FAR_STEP_PA - near * NEAR_STEP_PA);
  return { rise: near * (1 + bend * NEAR_STEP_PA), bend };
}

/** Saturated liquid of a given enthalpy; Newton on temperature with the slope along the line. */
function solveLiquidEnthalpy(line: SaturationLine, enthalpy: number, saturation: TableData['saturation']): SaturationLine['point'] {
  const known = saturation.liquidEnthalpy;
  let node = 0;
  while (node < known.length - 2 && known[node + 1] <= enthalpy) node++;
  const share = (enthalpy - known[node]) / (known[node + 1] - known[node]);
  let temperature = saturation.temperatureK[node] + share * (saturation.temperatureK[node + 1] - saturation.temperatureK[node]);
  let previousTemperature = 0;
  let previousEnthalpy = 0;
  let slope = (saturation.temperatureK[node + 1] - saturation.temperatureK[node]) / (known[node + 1] - known[node]);
  for (let round = 0; round < 40; round++) {
    const point = line.solveTemperature(temperature);
    const gap = enthalpy - point.liquid.enthalpyJPerKg;
    if (Math.abs(gap) < 1e-7) return point;
    if (round > 0) slope = (temperature - previousTemperature) / (point.liquid.enthalpyJPerKg - previousEnthalpy);
    previousTemperature = temperature;
    previousEnthalpy = point.liquid.enthalpyJPerKg;
    temperature += gap * slope;
  }
  return line.point;
}
