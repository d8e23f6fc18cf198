/**
 * The run-time look-up: one pressure, many enthalpies (see `Isobar`). Nothing here allocates or calls a transcendental
 * function (but below 15 Pa, for entropy): cells are found without any.
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
import { checkRange, type PressureLimits } from './checkRange';
import { invertEntropy, invertTemperature } from './isobarInverse';
import * as patch from './patchRow';
import type { Isobar } from './refrigerant';
import * as grid from './tableGrid';
import type { TableSet } from './tableSet';
import * as set from './tableSet';

// Held in this module: an imported binding costs a property read per use where modules are run unbundled.
const { floatView, wordView, HIGH } = bits;
const { ROW_NODES, ROW_MAP, ROW_MAP_OFFSET, LAST_ROW, TOP_REDUCED } = grid;
const { SATURATION_NODES, SATURATION_MAP, SATURATION_CELLS } = grid;
const { PART_SHIFT, ROW_INVERSE_WIDTHS, SATURATION_INVERSE_WIDTHS } = grid;
const { SATURATION_STRIDE } = set;
const { PatchRow, TEMPERATURE, VOLUME, ENTROPY } = patch;

const LOWEST_REDUCED = ROW_NODES[0];
const LAST_REDUCED = ROW_NODES[LAST_ROW];

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
  /** How far beyond the last row, in reduced pressure; else 0. */
  private beyondLast = 0;
  private readonly row = new PatchRow();

  constructor(tables: TableSet, limits: PressureLimits | null) {
    this.saturation = tables.saturation;
    this.liquid = tables.liquid;
    this.vapour = tables.vapour;
    this.pressureScale = tables.pressureScale;
    this.limits = limits;
  }

  setPressurePa(pressurePa: number): void {
    const { limits } = this;
    if (limits !== null) {
      checkRange(limits.fluid, 'pressure', pressurePa, limits.minPressurePa, limits.maxPressurePa, 'Pa');
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
    this.row.set(row, (reduced - start) * ROW_INVERSE_WIDTHS[row], width);
    const cell = SATURATION_MAP[part];
    this.setSaturation(cell, (reduced - SATURATION_NODES[cell]) * SATURATION_INVERSE_WIDTHS[cell]);
    this.edgeGapK = 0;
    this.beyondLast = 0;
  }

  quality(enthalpyJPerKg: number): number {
    return (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
  }

  temperatureK(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      return (
        this.edgeTemperatureK +
        this.row.value(this.vapour, TEMPERATURE, enthalpyJPerKg - this.vapourEnthalpyJPerKg)
      );
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      return (
        this.edgeTemperatureK +
        this.row.value(this.liquid, TEMPERATURE, this.liquidEnthalpyJPerKg - enthalpyJPerKg)
      );
    }
    if (this.edgeGapK === 0) return this.saturationTemperatureK;
    return this.saturationTemperatureK + (1 - this.quality(enthalpyJPerKg)) * this.edgeGapK;
  }

  volumeM3PerKg(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      return this.vapourProduct(enthalpyJPerKg - this.vapourEnthalpyJPerKg) * this.pressureInverse;
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      return this.liquidVolume(this.liquidEnthalpyJPerKg - enthalpyJPerKg);
    }
    const share = (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
    return this.liquidVolumeM3PerKg + share * (this.vapourVolumeM3PerKg - this.liquidVolumeM3PerKg);
  }

  volumeOf(heat: Float64Array, mass: Float64Array, at: number, out: Float64Array): void {
    const h = heat[at] / mass[at];
    const dry = h > this.vapourEnthalpyJPerKg;
    if (!(dry || h < this.liquidEnthalpyJPerKg) || this.beyondLast !== 0) {
      out[at] = this.volumeM3PerKg(h);
      return;
    }
    const distance = dry ? h - this.vapourEnthalpyJPerKg : this.liquidEnthalpyJPerKg - h;
    const change = this.row.value(dry ? this.vapour : this.liquid, VOLUME, distance);
    out[at] = dry ? (this.edgeProduct + change) * this.pressureInverse : this.edgeLiquidVolume + change;
  }

  temperaturesOf(enthalpy: Float64Array, from: number, to: number, out: Float64Array): void {
    const { row, liquid, vapour, edgeTemperatureK: edge } = this;
    const hl = this.liquidEnthalpyJPerKg;
    const hv = this.vapourEnthalpyJPerKg;
    for (let i = from; i < to; i++) {
      const h = enthalpy[i];
      const dry = h > hv;
      if (dry || h < hl) {
        out[i] = edge + row.value(dry ? vapour : liquid, TEMPERATURE, dry ? h - hv : hl - h);
      } else out[i] = this.temperatureK(h);
    }
  }

  entropyJPerKgK(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      return (
        this.edgeVapourEntropy +
        this.row.value(this.vapour, ENTROPY, enthalpyJPerKg - this.vapourEnthalpyJPerKg)
      );
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      return (
        this.edgeLiquidEntropy +
        this.row.value(this.liquid, ENTROPY, this.liquidEnthalpyJPerKg - enthalpyJPerKg)
      );
    }
    const share = (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
    return this.liquidEntropyJPerKgK + share * (this.vapourEntropyJPerKgK - this.liquidEntropyJPerKgK);
  }

  temperatureSlope(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      return this.row.slope(this.vapour, TEMPERATURE, enthalpyJPerKg - this.vapourEnthalpyJPerKg);
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      return -this.row.slope(this.liquid, TEMPERATURE, this.liquidEnthalpyJPerKg - enthalpyJPerKg);
    }
    return -this.edgeGapK * this.latentInverse;
  }

  lookUp(enthalpyJPerKg: number, out: Float64Array): void {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg && this.beyondLast === 0) {
      this.row.both(this.vapour, enthalpyJPerKg - this.vapourEnthalpyJPerKg, out);
      out[0] += this.edgeTemperatureK;
      out[1] = (out[1] + this.edgeProduct) * this.pressureInverse;
      out[3] *= this.pressureInverse;
    } else if (enthalpyJPerKg < this.liquidEnthalpyJPerKg && this.beyondLast === 0) {
      this.row.both(this.liquid, this.liquidEnthalpyJPerKg - enthalpyJPerKg, out);
      out[0] += this.edgeTemperatureK;
      out[1] += this.edgeLiquidVolume;
      out[2] = -out[2];
      out[3] = -out[3];
    } else {
      // Between the edges; beyond the last row the volume's slope outside them is only that of the dome.
      out[0] = this.temperatureK(enthalpyJPerKg);
      out[1] = this.volumeM3PerKg(enthalpyJPerKg);
      out[2] = this.temperatureSlope(enthalpyJPerKg);
      out[3] = (this.vapourVolumeM3PerKg - this.liquidVolumeM3PerKg) * this.latentInverse;
    }
  }

  enthalpyFromTemperatureJPerKg(temperatureK: number): number {
    const liquidEdge = this.saturationTemperatureK + this.edgeGapK;
    if (temperatureK <= liquidEdge)
      return invertTemperature(this, temperatureK, this.liquidEnthalpyJPerKg, -1);
    if (temperatureK > this.saturationTemperatureK)
      return invertTemperature(this, temperatureK, this.vapourEnthalpyJPerKg, 1);
    return this.liquidEnthalpyJPerKg;
  }

  enthalpyFromEntropyJPerKg(entropyJPerKgK: number): number {
    const { liquidEntropyJPerKgK: sl, vapourEntropyJPerKgK: sv } = this;
    if (entropyJPerKgK > sv) return invertEntropy(this, entropyJPerKgK, this.vapourEnthalpyJPerKg, 1);
    if (entropyJPerKgK < sl) return invertEntropy(this, entropyJPerKgK, this.liquidEnthalpyJPerKg, -1);
    const share = (entropyJPerKgK - sl) / (sv - sl);
    return this.liquidEnthalpyJPerKg + share * (this.vapourEnthalpyJPerKg - this.liquidEnthalpyJPerKg);
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
      this.row.set(0, 0, ROW_NODES[1] - LOWEST_REDUCED);
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
    this.row.set(cell, (inside - ROW_NODES[cell]) / width, width);
    this.beyondLast = reduced - inside;
    const liquidRise = this.row.value(this.liquid, TEMPERATURE, 0);
    const vapourRise = this.row.value(this.vapour, TEMPERATURE, 0);
    this.edgeGapK = liquidRise - vapourRise;
    this.saturationTemperatureK += vapourRise;
    this.liquidVolumeM3PerKg = this.liquidVolume(0);
    this.vapourVolumeM3PerKg = this.vapourProduct(0) * this.pressureInverse;
    this.liquidEntropyJPerKgK += this.row.value(this.liquid, ENTROPY, 0);
    this.vapourEntropyJPerKgK += this.row.value(this.vapour, ENTROPY, 0);
  }

  private liquidVolume(distanceJPerKg: number): number {
    const inside = this.edgeLiquidVolume + this.row.value(this.liquid, VOLUME, distanceJPerKg);
    if (this.beyondLast === 0) return inside;
    const share = this.beyondLast / (LAST_REDUCED + this.beyondLast);
    return inside + this.row.farSlope(this.liquid, VOLUME, distanceJPerKg) * LAST_REDUCED * share;
  }

  private vapourProduct(distanceJPerKg: number): number {
    const inside = this.edgeProduct + this.row.value(this.vapour, VOLUME, distanceJPerKg);
    if (this.beyondLast === 0) return inside;
    return inside + Math.max(this.row.farSlope(this.vapour, VOLUME, distanceJPerKg), 0) * this.beyondLast;
  }
}
