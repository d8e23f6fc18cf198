/**
 * Fast saturation pressure of water for the coil's hot path: cubic Hermite over even steps of 1.5 K, within 1e-5 of the full
 * formula from 200 to 400 K, held at the ends outside. No transcendental function, no allocation.
 */
import { splineSlopes } from '../numerics/cubicSpline';
import { humidityRatioFromVapourPressure } from './moistAir';
import { ICE_POINT_K, waterSaturationPressurePa } from './saturatedAir';

const STEP_K = 1.5;
const ICE_CELLS = 50;
const LIQUID_CELLS = 86;

/** Ice and liquid apart, since the slope jumps between them: [lowest, highest] temperature of each part. */
const ICE = makePart(ICE_POINT_K - 1e-9 - ICE_CELLS * STEP_K, ICE_CELLS);
const LIQUID = makePart(ICE_POINT_K, LIQUID_CELLS);

interface Part {
  readonly start: number;
  readonly cells: number;
  /** Per cell c0..c3 in the share of the cell. */
  readonly cubic: Float64Array;
}

function makePart(start: number, cells: number): Part {
  const nodes = Float64Array.from({ length: cells + 1 }, (_, i) => start + i * STEP_K);
  const values = nodes.map((t) => waterSaturationPressurePa(t));
  const slopes = splineSlopes(nodes, values);
  const cubic = new Float64Array(4 * cells);
  for (let i = 0; i < cells; i++) {
    const rise = values[i + 1] - values[i];
    const a = slopes[i] * STEP_K;
    const b = slopes[i + 1] * STEP_K;
    cubic.set([values[i], a, 3 * rise - 2 * a - b, a + b - 2 * rise], 4 * i);
  }
  return { start, cells, cubic };
}

/** Saturation pressure of water, Pa. */
export function fastWaterSaturationPressurePa(temperatureK: number): number {
  const part = temperatureK < ICE_POINT_K ? ICE : LIQUID;
  const along = Math.min(Math.max((temperatureK - part.start) / STEP_K, 0), part.cells);
  const cell = Math.min(Math.floor(along), part.cells - 1);
  const t = along - cell;
  const c = part.cubic;
  const at = 4 * cell;
  return c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
}

/** kg of water per kg of dry air at saturation. */
export function fastSaturationHumidityRatio(temperatureK: number, pressurePa: number): number {
  return humidityRatioFromVapourPressure(fastWaterSaturationPressurePa(temperatureK), pressurePa);
}
