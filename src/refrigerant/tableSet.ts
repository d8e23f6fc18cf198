/**
 * One fluid's tables made ready for look-up. Each interval of the saturation line becomes the four coefficients of a
 * cubic in its own share t = 0..1; each node of a patch holds value, slopes and twist of three properties (bicubic
 * Hermite). Slopes are those of a cubic spline through the stored values, apart for the rows up to the top and over it.
 */
import { splineSlopes } from '../numerics/cubicSpline';
import type { PatchData, TableData } from './tableData';
import { COLUMN_NODES, ROW_NODES, SATURATION_NODES, TOP_REDUCED, TOP_ROW } from './tableGrid';

/** Six saturation cubics a cell. */
export const SATURATION_STRIDE = 24;
/** Per patch node: temperature, volume, entropy; of each f, df/dx, df/dw, d2f/dx dw. */
export const PATCH_STRIDE = 12;

export interface TableSet {
  readonly topPressurePa: number;
  /** Reduced pressure per Pa. */
  readonly pressureScale: number;
  /** Cubics of T, hl, hv, vl, p vv, sl. */
  readonly saturation: Float64Array;
  readonly liquid: Float64Array;
  readonly vapour: Float64Array;
}

export function makeTableSet(data: TableData): TableSet {
  const { saturation } = data;
  return {
    topPressurePa: data.topPressurePa,
    pressureScale: TOP_REDUCED / data.topPressurePa,
    saturation: cubics(SATURATION_NODES, [
      saturation.temperatureK,
      saturation.liquidEnthalpy,
      saturation.vapourEnthalpy,
      saturation.liquidVolume,
      saturation.vapourProduct,
      saturation.liquidEntropy,
    ]),
    liquid: patch(data.liquid),
    vapour: patch(data.vapour),
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

function patch(data: PatchData): Float64Array {
  const rows = ROW_NODES.length;
  const columns = COLUMN_NODES.length;
  const out = new Float64Array(rows * columns * PATCH_STRIDE);
  [data.temperature, data.volume, data.entropy].forEach((values, property) => {
    const byPressure = new Float64Array(rows * columns);
    slopesAlongRows(values, byPressure, 0, TOP_ROW + 1);
    slopesAlongRows(values, byPressure, TOP_ROW + 1, rows);
    for (let i = 0; i < rows; i++) {
      const row = i * columns;
      const byColumn = splineSlopes(COLUMN_NODES, values.subarray(row, row + columns));
      const twist = splineSlopes(COLUMN_NODES, byPressure.subarray(row, row + columns));
      for (let j = 0; j < columns; j++) {
        const at = (row + j) * PATCH_STRIDE + 4 * property;
        out[at] = values[row + j];
        out[at + 1] = byPressure[row + j];
        out[at + 2] = byColumn[j];
        out[at + 3] = twist[j];
      }
    }
  });
  return out;
}

function slopesAlongRows(values: Float32Array, out: Float64Array, from: number, to: number): void {
  const columns = COLUMN_NODES.length;
  const nodes = ROW_NODES.subarray(from, to);
  const column = new Float64Array(to - from);
  for (let j = 0; j < columns; j++) {
    for (let i = from; i < to; i++) column[i - from] = values[i * columns + j];
    const slopes = splineSlopes(nodes, column);
    for (let i = from; i < to; i++) out[i * columns + j] = slopes[i - from];
  }
}
