/**
 * The run-time look-up: one pressure, many enthalpies (see `Isobar`). Nothing here allocates or calls a transcendental
 * function (but below 15 Pa, for entropy): cells are found from the bits of the number.
 *
 *   two phases  linear in quality between the saturation lines
 *   liquid      edge of the dome at this pressure + bicubic difference in (p, w), of T, v and s
 *   vapour      the same of T, p v and s; w grows with the distance of h from the dome's edge
 *
 * The tables reach from 15 Pa to 3.9 times the critical pressure. Over 0.985 of it the dome's edges stay where they are
 * there, and T, v and s run straight between them (a stand-in for the critical region); outside the edges the states are
 * those of the equation. Beyond the tables' ends everything goes on smoothly: to lower pressure as an ideal gas, to
 * higher with the compressibility of the last row, hotter or colder than the grid in a straight line.
 */
import * as bits from '../numerics/bits';
import { ln } from '../numerics/ln';
import { OutOfRangeError } from './outOfRangeError';
import type { Isobar } from './refrigerant';
import * as grid from './tableGrid';
import type { TableSet } from './tableSet';
import * as set from './tableSet';

// Held in this module: an imported binding costs a property read per use where modules are run unbundled.
const { floatView, wordView, HIGH } = bits;
const { ROW_NODES, ROW_MAP, ROW_MAP_OFFSET, LAST_ROW, TOP_REDUCED } = grid;
const { SATURATION_NODES, SATURATION_MAP, SATURATION_CELLS } = grid;
const { COLUMN_NODES, COLUMN_MAP, COLUMN_MAP_OFFSET, COLUMN_CELLS, COLUMN_UNIT_J_PER_KG, PART_SHIFT } = grid;
const { SATURATION_STRIDE, PATCH_STRIDE } = set;

const LOWEST_REDUCED = ROW_NODES[0];
const LAST_REDUCED = ROW_NODES[LAST_ROW];
const LAST_W = COLUMN_NODES[COLUMN_CELLS];
const LAST_COLUMN_START = COLUMN_NODES[COLUMN_CELLS - 1];
const W_PER_ENTHALPY = 1 / COLUMN_UNIT_J_PER_KG;
const ROW_STRIDE = COLUMN_NODES.length * PATCH_STRIDE;
const TEMPERATURE = 0;
const VOLUME = 4;
const ENTROPY = 8;
/** How near an inverse comes, J/kg, and how many rounds it may take. */
const INVERSE_TOLERANCE = 1e-6;
const INVERSE_ROUNDS = 40;

export interface PressureLimits {
  readonly fluid: string;
  readonly minPressurePa: number;
  readonly maxPressurePa: number;
}

export class TableIsobar implements Isobar {
  pressurePa = 0;
  saturationTemperatureK = 0;
  liquidEnthalpyJPerKg = 0;
  vapourEnthalpyJPerKg = 0;
  liquidVolumeM3PerKg = 0;
  vapourVolumeM3PerKg = 0;
  liquidEntropyJPerKgK = 0;
  vapourEntropyJPerKgK = 0;

  private readonly saturation: Float64Array;
  private readonly liquid: Float64Array;
  private readonly vapour: Float64Array;
  private readonly pressureScale: number;
  private readonly limits: PressureLimits | null;

  /** Values on the dome's edges that the patches are differences from. */
  private edgeTemperatureK = 0;
  private edgeLiquidVolume = 0;
  private edgeProduct = 0;
  private edgeLiquidEntropy = 0;
  private edgeVapourEntropy = 0;
  private latentInverse = 0;
  private pressureInverse = 0;
  /** T of liquid on its edge above T of vapour on its own; 0 up to the top row. */
  private edgeGapK = 0;
  /** Beyond the last row: how far, in reduced pressure, and 1 - end/p; else 0. */
  private beyondLast = 0;
  private beyondShare = 0;
  private rowStart = 0;
  private x00 = 0;
  private x10 = 0;
  private x01 = 0;
  private x11 = 0;
  private columnStart = 0;
  private columnWidth = 0;
  private t = 0;
  private excess = 0;

  constructor(tables: TableSet, limits: PressureLimits | null) {
    this.saturation = tables.saturation;
    this.liquid = tables.liquid;
    this.vapour = tables.vapour;
    this.pressureScale = tables.pressureScale;
    this.limits = limits;
  }

  setPressurePa(pressurePa: number): void {
    const { limits } = this;
    if (limits !== null && !(pressurePa >= limits.minPressurePa && pressurePa <= limits.maxPressurePa)) {
      throw new OutOfRangeError(
        limits.fluid,
        'pressure',
        pressurePa,
        limits.minPressurePa,
        limits.maxPressurePa,
        'Pa',
      );
    }
    this.pressurePa = pressurePa;
    this.pressureInverse = 1 / pressurePa;
    const reduced = pressurePa * this.pressureScale;
    if (!(reduced >= LOWEST_REDUCED && reduced < TOP_REDUCED)) {
      this.setOutside(reduced);
      return;
    }
    floatView[0] = reduced;
    const part = (wordView[HIGH] >>> PART_SHIFT) - ROW_MAP_OFFSET;
    const row = ROW_MAP[part];
    const start = ROW_NODES[row];
    const width = ROW_NODES[row + 1] - start;
    this.setRow(row, (reduced - start) / width, width);
    const cell = SATURATION_MAP[part];
    const from = SATURATION_NODES[cell];
    this.setSaturation(cell, (reduced - from) / (SATURATION_NODES[cell + 1] - from));
    this.edgeGapK = 0;
    this.beyondLast = 0;
  }

  quality(enthalpyJPerKg: number): number {
    return (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
  }

  temperatureK(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findColumn(enthalpyJPerKg - this.vapourEnthalpyJPerKg);
      return this.edgeTemperatureK + this.patchValue(this.vapour, TEMPERATURE);
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findColumn(this.liquidEnthalpyJPerKg - enthalpyJPerKg);
      return this.edgeTemperatureK + this.patchValue(this.liquid, TEMPERATURE);
    }
    if (this.edgeGapK === 0) return this.saturationTemperatureK;
    return this.saturationTemperatureK + (1 - this.quality(enthalpyJPerKg)) * this.edgeGapK;
  }

  volumeM3PerKg(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findColumn(enthalpyJPerKg - this.vapourEnthalpyJPerKg);
      return this.vapourProduct() * this.pressureInverse;
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findColumn(this.liquidEnthalpyJPerKg - enthalpyJPerKg);
      return this.liquidVolume();
    }
    const share = (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
    return this.liquidVolumeM3PerKg + share * (this.vapourVolumeM3PerKg - this.liquidVolumeM3PerKg);
  }

  entropyJPerKgK(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findColumn(enthalpyJPerKg - this.vapourEnthalpyJPerKg);
      return this.edgeVapourEntropy + this.patchValue(this.vapour, ENTROPY);
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findColumn(this.liquidEnthalpyJPerKg - enthalpyJPerKg);
      return this.edgeLiquidEntropy + this.patchValue(this.liquid, ENTROPY);
    }
    const share = (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
    return this.liquidEntropyJPerKgK + share * (this.vapourEntropyJPerKgK - this.liquidEntropyJPerKgK);
  }

  temperatureSlope(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findColumn(enthalpyJPerKg - this.vapourEnthalpyJPerKg);
      return this.patchSlope(this.vapour, TEMPERATURE) * W_PER_ENTHALPY;
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findColumn(this.liquidEnthalpyJPerKg - enthalpyJPerKg);
      return -this.patchSlope(this.liquid, TEMPERATURE) * W_PER_ENTHALPY;
    }
    return -this.edgeGapK * this.latentInverse;
  }

  enthalpyFromTemperatureJPerKg(temperatureK: number): number {
    const liquidEdge = this.saturationTemperatureK + this.edgeGapK;
    if (temperatureK <= liquidEdge)
      return this.invertTemperature(temperatureK, this.liquidEnthalpyJPerKg, -1);
    if (temperatureK > this.saturationTemperatureK)
      return this.invertTemperature(temperatureK, this.vapourEnthalpyJPerKg, 1);
    return this.liquidEnthalpyJPerKg;
  }

  enthalpyFromEntropyJPerKg(entropyJPerKgK: number): number {
    const { liquidEntropyJPerKgK: sl, vapourEntropyJPerKgK: sv } = this;
    if (entropyJPerKgK > sv) return this.invertEntropy(entropyJPerKgK, this.vapourEnthalpyJPerKg, 1);
    if (entropyJPerKgK < sl) return this.invertEntropy(entropyJPerKgK, this.liquidEnthalpyJPerKg, -1);
    const share = (entropyJPerKgK - sl) / (sv - sl);
    return this.liquidEnthalpyJPerKg + share * (this.vapourEnthalpyJPerKg - this.liquidEnthalpyJPerKg);
  }

  /** Newton from the dome's edge outwards; T rises with h, so the first step of a bent curve is held on its side. */
  private invertTemperature(temperatureK: number, edge: number, side: -1 | 1): number {
    let h = edge + side * 1e-3;
    for (let round = 0; round < INVERSE_ROUNDS; round++) {
      const step = (temperatureK - this.temperatureK(h)) / this.temperatureSlope(h);
      h += step;
      if (side * (h - edge) <= 0) h = edge + side * 1e-9;
      if (Math.abs(step) < INVERSE_TOLERANCE) break;
    }
    return h;
  }

  /** Newton with dh/ds = T at constant pressure. */
  private invertEntropy(entropyJPerKgK: number, edge: number, side: -1 | 1): number {
    let h = edge;
    for (let round = 0; round < INVERSE_ROUNDS; round++) {
      const step = (entropyJPerKgK - this.entropyJPerKgK(h)) * this.temperatureK(h);
      h += step;
      if (side * (h - edge) < 0) h = edge;
      if (Math.abs(step) < INVERSE_TOLERANCE) break;
    }
    return h;
  }

  private setRow(cell: number, t: number, width: number): void {
    const u = 1 - t;
    this.rowStart = cell * ROW_STRIDE;
    this.x00 = (1 + 2 * t) * u * u;
    this.x10 = t * u * u * width;
    this.x01 = t * t * (3 - 2 * t);
    this.x11 = -t * t * u * width;
  }

  private setSaturation(cell: number, t: number): void {
    const c = this.saturation;
    const at = cell * SATURATION_STRIDE;
    const ts = c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
    const hl = c[at + 4] + t * (c[at + 5] + t * (c[at + 6] + t * c[at + 7]));
    const hv = c[at + 8] + t * (c[at + 9] + t * (c[at + 10] + t * c[at + 11]));
    const vl = c[at + 12] + t * (c[at + 13] + t * (c[at + 14] + t * c[at + 15]));
    const zv = c[at + 16] + t * (c[at + 17] + t * (c[at + 18] + t * c[at + 19]));
    const sl = c[at + 20] + t * (c[at + 21] + t * (c[at + 22] + t * c[at + 23]));
    const latent = hv - hl;
    const sv = sl + latent / ts;
    this.latentInverse = 1 / latent;
    this.edgeTemperatureK = this.saturationTemperatureK = ts;
    this.liquidEnthalpyJPerKg = hl;
    this.vapourEnthalpyJPerKg = hv;
    this.edgeLiquidVolume = this.liquidVolumeM3PerKg = vl;
    this.edgeProduct = zv;
    this.vapourVolumeM3PerKg = zv * this.pressureInverse;
    this.edgeLiquidEntropy = this.liquidEntropyJPerKgK = sl;
    this.edgeVapourEntropy = this.vapourEntropyJPerKgK = sv;
  }

  /** Below the lowest row or from the top row on: see the file's head. */
  private setOutside(reduced: number): void {
    this.beyondLast = 0;
    this.edgeGapK = 0;
    if (!(reduced >= LOWEST_REDUCED)) {
      this.setRow(0, 0, ROW_NODES[1] - LOWEST_REDUCED);
      this.setSaturation(0, 0);
      const rise = (this.edgeProduct / this.edgeTemperatureK) * ln(LOWEST_REDUCED / Math.max(reduced, 1e-9));
      this.edgeVapourEntropy = this.vapourEntropyJPerKgK += rise;
      return;
    }
    const inside = reduced < LAST_REDUCED ? reduced : LAST_REDUCED;
    floatView[0] = inside;
    const cell =
      inside < LAST_REDUCED ? ROW_MAP[(wordView[HIGH] >>> PART_SHIFT) - ROW_MAP_OFFSET] : LAST_ROW - 1;
    const width = ROW_NODES[cell + 1] - ROW_NODES[cell];
    this.setSaturation(SATURATION_CELLS - 1, 1);
    this.setRow(cell, (inside - ROW_NODES[cell]) / width, width);
    if (inside < reduced) {
      this.beyondLast = reduced - LAST_REDUCED;
      this.beyondShare = 1 - LAST_REDUCED / reduced;
    }
    this.findColumn(0);
    const liquidRise = this.patchValue(this.liquid, TEMPERATURE);
    const vapourRise = this.patchValue(this.vapour, TEMPERATURE);
    this.edgeGapK = liquidRise - vapourRise;
    this.saturationTemperatureK += vapourRise;
    this.liquidVolumeM3PerKg = this.liquidVolume();
    this.vapourVolumeM3PerKg = this.vapourProduct() * this.pressureInverse;
    this.liquidEntropyJPerKgK += this.patchValue(this.liquid, ENTROPY);
    this.vapourEntropyJPerKgK += this.patchValue(this.vapour, ENTROPY);
  }

  /** Column cell of a distance from the dome's edge, J/kg, not negative. */
  private findColumn(distanceJPerKg: number): void {
    const w = 1 + distanceJPerKg * W_PER_ENTHALPY;
    if (w < LAST_W) {
      floatView[0] = w;
      const cell = COLUMN_MAP[(wordView[HIGH] >>> PART_SHIFT) - COLUMN_MAP_OFFSET];
      const start = COLUMN_NODES[cell];
      const width = COLUMN_NODES[cell + 1] - start;
      this.columnStart = this.rowStart + cell * PATCH_STRIDE;
      this.columnWidth = width;
      this.t = (w - start) / width;
      this.excess = 0;
      return;
    }
    this.columnStart = this.rowStart + (COLUMN_CELLS - 1) * PATCH_STRIDE;
    this.columnWidth = LAST_W - LAST_COLUMN_START;
    this.t = 1;
    this.excess = w - LAST_W;
  }

  private patchValue(f: Float64Array, property: number): number {
    const { x00, x10, x01, x11, t, columnWidth: width } = this;
    const a = this.columnStart + property;
    const b = a + ROW_STRIDE;
    const c = a + PATCH_STRIDE;
    const d = b + PATCH_STRIDE;
    const value0 = x00 * f[a] + x10 * f[a + 1] + x01 * f[b] + x11 * f[b + 1];
    const slope0 = x00 * f[a + 2] + x10 * f[a + 3] + x01 * f[b + 2] + x11 * f[b + 3];
    const value1 = x00 * f[c] + x10 * f[c + 1] + x01 * f[d] + x11 * f[d + 1];
    const slope1 = x00 * f[c + 2] + x10 * f[c + 3] + x01 * f[d + 2] + x11 * f[d + 3];
    const u = 1 - t;
    const inside =
      u * u * ((1 + 2 * t) * value0 + t * width * slope0) +
      t * t * ((3 - 2 * t) * value1 - u * width * slope1);
    return this.excess === 0 ? inside : inside + this.excess * slope1;
  }

  /** d/dw of a patch. */
  private patchSlope(f: Float64Array, property: number): number {
    const { x00, x10, x01, x11, t, columnWidth: width } = this;
    const a = this.columnStart + property;
    const b = a + ROW_STRIDE;
    const c = a + PATCH_STRIDE;
    const d = b + PATCH_STRIDE;
    const value0 = x00 * f[a] + x10 * f[a + 1] + x01 * f[b] + x11 * f[b + 1];
    const slope0 = x00 * f[a + 2] + x10 * f[a + 3] + x01 * f[b + 2] + x11 * f[b + 3];
    const value1 = x00 * f[c] + x10 * f[c + 1] + x01 * f[d] + x11 * f[d + 1];
    const slope1 = x00 * f[c + 2] + x10 * f[c + 3] + x01 * f[d + 2] + x11 * f[d + 3];
    const secant = (value1 - value0) / width;
    return slope0 + t * (2 * (3 * secant - 2 * slope0 - slope1) + 3 * t * (slope0 + slope1 - 2 * secant));
  }

  private liquidVolume(): number {
    const inside = this.edgeLiquidVolume + this.patchValue(this.liquid, VOLUME);
    if (this.beyondLast === 0) return inside;
    return inside + this.lastRowSlope(this.liquid) * LAST_REDUCED * this.beyondShare;
  }

  private vapourProduct(): number {
    const inside = this.edgeProduct + this.patchValue(this.vapour, VOLUME);
    if (this.beyondLast === 0) return inside;
    return inside + Math.max(this.lastRowSlope(this.vapour), 0) * this.beyondLast;
  }

  /** d/dx of the volume field on the last row, straight between columns. */
  private lastRowSlope(f: Float64Array): number {
    const at = this.columnStart + ROW_STRIDE + VOLUME + 1;
    return f[at] + this.t * (f[at + PATCH_STRIDE] - f[at]);
  }
}
