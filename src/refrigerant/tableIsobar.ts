/**
 * The run-time look-up: one pressure, many enthalpies (see `Isobar`). Nothing here allocates or calls a transcendental
 * function: cells are found from the bits of the number.
 *
 *   liquid      state on the saturated-liquid line with the same h, then T0 + a dp + b dp^2 and v0 + a dp/(1 + b dp);
 *               s = s0 - dp (v0 + v)/(T0 + T), from ds = -(v/T) dp at constant h
 *   two phases  linear in quality between the saturation lines
 *   vapour      bicubic in (p, w), w = 1 + (h - hv)/20 kJ/kg, of T, p v and s - sv
 *
 * Past the ends the tables are continued smoothly (`continue` mode, meant for the loop, never throws for a number):
 * below the lowest node as an ideal gas (p v and T keep their values); above the top node (0.985 of critical pressure)
 * the dome stays as it is there, vapour keeps p v, liquid goes on being compressed; hotter or colder than the grid
 * T and p v go on in a straight line.
 */
import * as bits from '../numerics/bits';
import { ln } from '../numerics/ln';
import { OutOfRangeError } from './outOfRangeError';
import type { Isobar } from './refrigerant';
import * as grid from './tableGrid';
import * as set from './tableSet';
import type { TableSet } from './tableSet';

// Held in this module: an imported binding costs a property read per use where modules are run unbundled.
const { floatView, wordView, HIGH } = bits;
const { LIQUID_CELLS, PRESSURE_CELLS, PRESSURE_MAP, PRESSURE_MAP_OFFSET, PRESSURE_MAP_SHIFT, PRESSURE_NODES, TOP_REDUCED } = grid;
const { SUPERHEAT_CELLS, SUPERHEAT_NODES, SUPERHEAT_SHIFT, SUPERHEAT_UNIT_J_PER_KG } = grid;
const { LIQUID_STRIDE, SATURATION_STRIDE, VAPOUR_STRIDE } = set;
const LOWEST_REDUCED = PRESSURE_NODES[0];
const SUPERHEAT_BASE = 1023 * 8;
const LAST_W = SUPERHEAT_NODES[SUPERHEAT_CELLS];
const ROW = SUPERHEAT_NODES.length * VAPOUR_STRIDE;
const TEMPERATURE = 0;
const PRODUCT = 4;
const ENTROPY_RISE = 8;

export interface IsobarLimits {
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

  private readonly tables: TableSet;
  private readonly limits: IsobarLimits | null;
  private vapourProductJPerKg = 0;
  private latentInverse = 0;
  /** T of liquid at the dome's edge above T of vapour there; 0 below the top node. */
  private liquidEdgeRiseK = 0;
  private rowStart = 0;
  private x00 = 0;
  private x10 = 0;
  private x01 = 0;
  private x11 = 0;
  /** ln of (end of table / pressure) outside the table, 0 inside. */
  private logBeyond = 0;
  private cell = 0;
  private t = 0;
  private width = 0;
  private excess = 0;

  constructor(tables: TableSet, limits: IsobarLimits | null) {
    this.tables = tables;
    this.limits = limits;
  }

  setPressurePa(pressurePa: number): void {
    const { limits, tables } = this;
    if (limits !== null && !(pressurePa >= limits.minPressurePa && pressurePa <= limits.maxPressurePa)) {
      throw new OutOfRangeError(limits.fluid, 'pressure', pressurePa, limits.minPressurePa, limits.maxPressurePa, 'Pa');
    }
    this.pressurePa = pressurePa;
    const reduced = pressurePa * tables.pressureScale;
    let cell: number;
    let t: number;
    if (reduced >= TOP_REDUCED) {
      cell = PRESSURE_CELLS - 1;
      t = 1;
    } else if (reduced >= LOWEST_REDUCED) {
      floatView[0] = reduced;
      cell = PRESSURE_MAP[(wordView[HIGH] >>> PRESSURE_MAP_SHIFT) - PRESSURE_MAP_OFFSET];
      t = (reduced - PRESSURE_NODES[cell]) / (PRESSURE_NODES[cell + 1] - PRESSURE_NODES[cell]);
    } else {
      cell = 0;
      t = 0;
    }
    const c = tables.saturation;
    const at = cell * SATURATION_STRIDE;
    const ts = c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
    const hl = c[at + 4] + t * (c[at + 5] + t * (c[at + 6] + t * c[at + 7]));
    const hv = c[at + 8] + t * (c[at + 9] + t * (c[at + 10] + t * c[at + 11]));
    const zv = c[at + 16] + t * (c[at + 17] + t * (c[at + 18] + t * c[at + 19]));
    const sl = c[at + 20] + t * (c[at + 21] + t * (c[at + 22] + t * c[at + 23]));
    this.saturationTemperatureK = ts;
    this.liquidEnthalpyJPerKg = hl;
    this.vapourEnthalpyJPerKg = hv;
    this.liquidVolumeM3PerKg = c[at + 12] + t * (c[at + 13] + t * (c[at + 14] + t * c[at + 15]));
    this.vapourProductJPerKg = zv;
    this.vapourVolumeM3PerKg = zv / pressurePa;
    this.liquidEntropyJPerKgK = sl;
    this.vapourEntropyJPerKgK = sl + (hv - hl) / ts;
    this.latentInverse = 1 / (hv - hl);
    this.setRow(cell, t);
    this.logBeyond = 0;
    this.liquidEdgeRiseK = 0;
    if (reduced >= TOP_REDUCED || reduced < LOWEST_REDUCED) this.continueBeyond(reduced);
  }

  quality(enthalpyJPerKg: number): number {
    return (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
  }

  temperatureK(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findSuperheat(enthalpyJPerKg);
      return this.vapourValue(TEMPERATURE);
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findLiquid(enthalpyJPerKg);
      return this.liquidTemperature();
    }
    if (this.liquidEdgeRiseK === 0) return this.saturationTemperatureK;
    return this.saturationTemperatureK + (1 - this.quality(enthalpyJPerKg)) * this.liquidEdgeRiseK;
  }

  volumeM3PerKg(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findSuperheat(enthalpyJPerKg);
      return this.vapourValue(PRODUCT) / this.pressurePa;
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findLiquid(enthalpyJPerKg);
      return this.liquidVolume();
    }
    const share = (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
    return this.liquidVolumeM3PerKg + share * (this.vapourVolumeM3PerKg - this.liquidVolumeM3PerKg);
  }

  entropyJPerKgK(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findSuperheat(enthalpyJPerKg);
      const inside = this.vapourEntropyJPerKgK + this.vapourValue(ENTROPY_RISE);
      return inside;
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findLiquid(enthalpyJPerKg);
      return this.liquidEntropy();
    }
    const share = (enthalpyJPerKg - this.liquidEnthalpyJPerKg) * this.latentInverse;
    return this.liquidEntropyJPerKgK + share * (this.vapourEntropyJPerKgK - this.liquidEntropyJPerKgK);
  }

  temperatureSlope(enthalpyJPerKg: number): number {
    if (enthalpyJPerKg > this.vapourEnthalpyJPerKg) {
      this.findSuperheat(enthalpyJPerKg);
      return this.vapourSlope(TEMPERATURE) / SUPERHEAT_UNIT_J_PER_KG;
    }
    if (enthalpyJPerKg < this.liquidEnthalpyJPerKg) {
      this.findLiquid(enthalpyJPerKg);
      return this.liquidTemperatureSlope();
    }
    return 0;
  }

  enthalpyFromTemperatureJPerKg(temperatureK: number): number {
    const vapour = temperatureK > this.saturationTemperatureK;
    if (temperatureK === this.saturationTemperatureK) return this.liquidEnthalpyJPerKg;
    const edge = vapour ? this.vapourEnthalpyJPerKg : this.liquidEnthalpyJPerKg;
    const outside = vapour ? 1e-3 : -1e-3;
    let h = edge + outside;
    for (let round = 0; round < 30; round++) {
      const step = (temperatureK - this.temperatureK(h)) / this.temperatureSlope(h);
      h += step;
      if (vapour ? h < edge + outside : h > edge + outside) h = edge + outside;
      if (Math.abs(step) < 1e-6) break;
    }
    return h;
  }

  enthalpyFromEntropyJPerKg(entropyJPerKgK: number): number {
    const vapour = entropyJPerKgK > this.vapourEntropyJPerKgK;
    if (!vapour && entropyJPerKgK >= this.liquidEntropyJPerKgK) {
      const share = (entropyJPerKgK - this.liquidEntropyJPerKgK) / (this.vapourEntropyJPerKgK - this.liquidEntropyJPerKgK);
      return this.liquidEnthalpyJPerKg + share * (this.vapourEnthalpyJPerKg - this.liquidEnthalpyJPerKg);
    }
    const edge = vapour ? this.vapourEnthalpyJPerKg : this.liquidEnthalpyJPerKg;
    let h = edge;
    for (let round = 0; round < 30; round++) {
      const step = (entropyJPerKgK - this.entropyJPerKgK(h)) * this.temperatureK(h);
      h += step;
      if (Math.abs(step) < 1e-6) break;
    }
    return vapour ? Math.max(h, edge) : Math.min(h, edge);
  }

  private setRow(cell: number, t: number): void {
    const width = PRESSURE_NODES[cell + 1] - PRESSURE_NODES[cell];
    const u = 1 - t;
    this.rowStart = cell * ROW;
    this.x00 = (1 + 2 * t) * u * u;
    this.x10 = t * u * u * width;
    this.x01 = t * t * (3 - 2 * t);
    this.x11 = -t * t * u * width;
  }

  /** Outside the pressure nodes: see the file's head. */
  private continueBeyond(reduced: number): void {
    const end = reduced < LOWEST_REDUCED ? LOWEST_REDUCED : TOP_REDUCED;
    this.logBeyond = ln(end / Math.max(reduced, 1e-9));
    this.vapourEntropyJPerKgK += (this.vapourProductJPerKg / this.saturationTemperatureK) * this.logBeyond;
    if (end !== TOP_REDUCED) return;
    this.findLiquid(this.liquidEnthalpyJPerKg);
    this.liquidVolumeM3PerKg = this.liquidVolume();
    this.liquidEntropyJPerKgK = this.liquidEntropy();
    this.liquidEdgeRiseK = this.liquidTemperature() - this.saturationTemperatureK;
  }

  private findSuperheat(enthalpyJPerKg: number): void {
    const w = 1 + (enthalpyJPerKg - this.vapourEnthalpyJPerKg) / SUPERHEAT_UNIT_J_PER_KG;
    if (w >= LAST_W) {
      this.cell = SUPERHEAT_CELLS - 1;
      this.width = LAST_W - SUPERHEAT_NODES[SUPERHEAT_CELLS - 1];
      this.t = 1;
      this.excess = w - LAST_W;
      return;
    }
    floatView[0] = w;
    const cell = (wordView[HIGH] >>> SUPERHEAT_SHIFT) - SUPERHEAT_BASE;
    const start = SUPERHEAT_NODES[cell];
    this.cell = cell;
    this.width = SUPERHEAT_NODES[cell + 1] - start;
    this.t = (w - start) / this.width;
    this.excess = 0;
  }

  private vapourValue(property: number): number {
    const f = this.tables.vapour;
    const { x00, x10, x01, x11, t, width } = this;
    const a = this.rowStart + this.cell * VAPOUR_STRIDE + property;
    const b = a + ROW;
    const u = 1 - t;
    const value0 = x00 * f[a] + x10 * f[a + 1] + x01 * f[b] + x11 * f[b + 1];
    const slope0 = x00 * f[a + 2] + x10 * f[a + 3] + x01 * f[b + 2] + x11 * f[b + 3];
    const c = a + VAPOUR_STRIDE;
    const d = b + VAPOUR_STRIDE;
    const value1 = x00 * f[c] + x10 * f[c + 1] + x01 * f[d] + x11 * f[d + 1];
    const slope1 = x00 * f[c + 2] + x10 * f[c + 3] + x01 * f[d + 2] + x11 * f[d + 3];
    const inside = u * u * ((1 + 2 * t) * value0 + t * width * slope0) + t * t * ((3 - 2 * t) * value1 - u * width * slope1);
    return this.excess === 0 ? inside : inside + this.excess * slope1;
  }

  private vapourSlope(property: number): number {
    const f = this.tables.vapour;
    const { x00, x10, x01, x11, t, width } = this;
    const a = this.rowStart + this.cell * VAPOUR_STRIDE + property;
    const b = a + ROW;
    const c = a + VAPOUR_STRIDE;
    const d = b + VAPOUR_STRIDE;
    const value0 = x00 * f[a] + x10 * f[a + 1] + x01 * f[b] + x11 * f[b + 1];
    const slope0 = x00 * f[a + 2] + x10 * f[a + 3] + x01 * f[b + 2] + x11 * f[b + 3];
    const value1 = x00 * f[c] + x10 * f[c + 1] + x01 * f[d] + x11 * f[d + 1];
    const slope1 = x00 * f[c + 2] + x10 * f[c + 3] + x01 * f[d + 2] + x11 * f[d + 3];
    const secant = (value1 - value0) / width;
    return slope0 + t * (2 * (3 * secant - 2 * slope0 - slope1) + 3 * t * (slope0 + slope1 - 2 * secant));
  }

  private findLiquid(enthalpyJPerKg: number): void {
    const { tables } = this;
    const along = (enthalpyJPerKg - tables.liquidFirstEnthalpy) * tables.liquidCellsPerEnthalpy;
    let cell = Math.floor(along);
    if (cell < 0) cell = 0;
    else if (cell > LIQUID_CELLS - 1) cell = LIQUID_CELLS - 1;
    const t = along - cell;
    this.cell = cell;
    this.t = t < 0 ? 0 : t > 1 ? 1 : t;
    this.excess = t - this.t;
  }

  private liquidField(field: number): number {
    const c = this.tables.liquid;
    const at = this.cell * LIQUID_STRIDE + 4 * field;
    const t = this.t;
    return c[at] + t * (c[at + 1] + t * (c[at + 2] + t * c[at + 3]));
  }

  private liquidTemperature(): number {
    const rise = this.pressurePa - this.liquidField(0);
    const base = this.liquidField(1) + this.liquidExcess(1);
    return base + rise * (this.liquidField(4) + rise * this.liquidField(5));
  }

  private liquidVolume(): number {
    const rise = this.pressurePa - this.liquidField(0);
    return this.liquidField(2) + (this.liquidField(6) * rise) / (1 + this.liquidField(7) * rise);
  }

  private liquidEntropy(): number {
    const rise = this.pressurePa - this.liquidField(0);
    const volumes = this.liquidField(2) + this.liquidVolume();
    const temperatures = this.liquidField(1) + this.liquidTemperature();
    return this.liquidField(3) + this.liquidExcess(3) - (rise * volumes) / temperatures;
  }

  /** Straight continuation of a field below the first or above the last liquid enthalpy. */
  private liquidExcess(field: number): number {
    if (this.excess === 0) return 0;
    return this.excess * this.liquidFieldSlope(field);
  }

  private liquidFieldSlope(field: number): number {
    const c = this.tables.liquid;
    const at = this.cell * LIQUID_STRIDE + 4 * field;
    const t = this.t;
    return c[at + 1] + t * (2 * c[at + 2] + 3 * t * c[at + 3]);
  }

  private liquidTemperatureSlope(): number {
    const rise = this.pressurePa - this.liquidField(0);
    const byRise = this.liquidField(4) + 2 * rise * this.liquidField(5);
    const own =
      this.liquidFieldSlope(1) +
      rise * (this.liquidFieldSlope(4) + rise * this.liquidFieldSlope(5)) -
      byRise * this.liquidFieldSlope(0);
    return own * this.tables.liquidCellsPerEnthalpy;
  }
}
