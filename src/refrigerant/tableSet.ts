/**
 * One fluid's tables made ready for look-up. Each interval of the saturation and liquid tables becomes the four
 * coefficients of a cubic in its own share t = 0..1; each node of the vapour patch holds value, slopes and twist of
 * three properties (bicubic Hermite). Slopes are those of a cubic spline through the stored values.
 */
import { splineSlopes } from '../numerics/cubicSpline';
import type { TableData } from './tableData';
import { LIQUID_CELLS, PRESSURE_NODES, SUPERHEAT_NODES, TOP_REDUCED } from './tableGrid';

/** Order of the saturation cubics within a pressure cell, four coefficients each. */
export const SATURATION_STRIDE = 24;
/** Order of the liquid cubics within an enthalpy cell, four coefficients each. */
export const LIQUID_STRIDE = 32;
/** Per vapour node: T, pv, entropy rise; of each f, df/dx, df/dw, d2f/dx dw. */
export const VAPOUR_STRIDE = 12;

export interface TableSet {
  readonly topPressurePa: number;
  /** Reduced pressure per Pa. */
  readonly pressureScale: number;
  /** Cubics of T, hl, hv, vl, p vv, sl. */
  readonly saturation: Float64Array;
  /** Cubics of p0, T0, v0, s0, and rise and bend of T, rise and bend of v. */
  readonly liquid: Float64Array;
  readonly liquidFirstEnthalpy: number;
  readonly liquidCellsPerEnthalpy: number;
  readonly vapour: Float64Array;
}

export function makeTableSet(data: TableData): TableSet {
  const { saturation, liquid, vapour } = data;
  const evenSteps = Float64Array.from({ length: LIQUID_CELLS + 1 }, (_, i) => i);
  return {
    topPressurePa: data.topPressurePa,
    pressureScale: TOP_REDUCED / data.topPressurePa,
    saturation: cubics(PRESSURE_NODES, [
      saturation.temperatureK,
      saturation.liquidEnthalpy,
      saturation.vapourEnthalpy,
      saturation.liquidVolume,
      saturation.vapourProduct,
      saturation.liquidEntropy,
    ]),
    liquid: cubics(evenSteps, [
      liquid.pressurePa,
      liquid.temperatureK,
      liquid.volume,
      liquid.entropy,
      liquid.temperatureRise,
      liquid.temperatureBend,
      liquid.volumeRise,
      liquid.volumeBend,
    ]),
    liquidFirstEnthalpy: liquid.firstEnthalpy,
    liquidCellsPerEnthalpy: LIQUID_CELLS / (liquid.lastEnthalpy - liquid.firstEnthalpy),
    vapour: patch([vapour.temperatureK, vapour.product, vapour.entropyRise]),
  };
}

/** Cell by cell, property by property: c0 + c1 t + c2 t^2 + c3 t^3. */
function cubics(nodes: Float64Array, columns: readonly Float64Array[]): Float64Array {
  const cells = nodes.length - 1;
  const out = new Float64Array(cells * columns.length * 4);
  columns.forEach((values, property) => {
    const slopes = splineSlopes(nodes, values);
    for (let i = 0; i < cells; i++) {
      const width = nodes[i + 1] - nodes[i];
      const rise = values[i + 1] - values[i];
      const start = slopes[i] * width;
      const end = slopes[i + 1] * width;
      const at = (i * columns.length + property) * 4;
      out[at] = values[i];
      out[at + 1] = start;
      out[at + 2] = 3 * rise - 2 * start - end;
      out[at + 3] = start + end - 2 * rise;
    }
  });
  return out;
}

function patch(properties: readonly Float32Array[]): Float64Array {
  const rows = PRESSURE_NODES.length;
  const columns = SUPERHEAT_NODES.length;
  const out = new Float64Array(rows * columns * VAPOUR_STRIDE);
  properties.forEach((values, property) => {
    const byPressure = slopesAlongRows(values, rows, columns);
    const twist = new Float64Array(rows * columns);
    for (let i = 0; i < rows; i++) {
      const row = i * columns;
      const bySuperheat = splineSlopes(SUPERHEAT_NODES, values.subarray(row, row + columns));
      twist.set(splineSlopes(SUPERHEAT_NODES, byPressure.subarray(row, row + columns)), row);
      for (let j = 0; j < columns; j++) {
        const at = (row + j) * VAPOUR_STRIDE + 4 * property;
        out[at] = values[row + j];
        out[at + 1] = byPressure[row + j];
        out[at + 2] = bySuperheat[j];
        out[at + 3] = twist[row + j];
      }
    }
  });
  return out;
}

function slopesAlongRows(values: Float32Array, rows: number, columns: number): Float64Array {
  const out = new Float64Array(rows * columns);
  const column = new Float64Array(rows);
  for (let j = 0; j < columns; j++) {
    for (let i = 0; i < rows; i++) column[i] = values[i * columns + j];
    const slopes = splineSlopes(PRESSURE_NODES, column);
    for (let i = 0; i < rows; i++) out[i * columns + j] = slopes[i];
  }
  return out;
}
