/**
 * Bicubic look-up in a patch along one pressure: the row is set once, then any property of a patch is read at any
 * distance from the dome's edge.
 */
import * as grid from './tableGrid';
import * as set from './tableSet';

// Held in this module: an imported binding costs a property read per use where modules are run unbundled.
const {
  COLUMN_NODES,
  COLUMN_MAP,
  COLUMN_FINENESS,
  COLUMN_CELLS,
  COLUMN_UNIT_J_PER_KG,
  COLUMN_INVERSE_WIDTHS,
} = grid;
const { PATCH_STRIDE } = set;

const LAST_W = COLUMN_NODES[COLUMN_CELLS];
const W_PER_ENTHALPY = 1 / COLUMN_UNIT_J_PER_KG;
const ROW_STRIDE = COLUMN_NODES.length * PATCH_STRIDE;

/** Properties of a patch, as offsets within a node. */
export const TEMPERATURE = 0;
export const VOLUME = 4;
export const ENTROPY = 8;

export class PatchRow {
  private rowStart = 0;
  private x00 = 0;
  private x10 = 0;
  private x01 = 0;
  private x11 = 0;

  /** To share `t` of row cell `cell`, which is `width` wide in reduced pressure. */
  set(cell: number, t: number, width: number): void {
    const u = 1 - t;
    this.rowStart = cell * ROW_STRIDE;
    this.x00 = (1 + 2 * t) * u * u;
    this.x10 = t * u * u * width;
    this.x01 = t * t * (3 - 2 * t);
    this.x11 = -t * t * u * width;
  }

  /** A property at a distance from the dome's edge, J/kg, not negative. */
  value(f: Float64Array, property: number, distanceJPerKg: number): number {
    const { x00, x10, x01, x11 } = this;
    const w = 1 + distanceJPerKg * W_PER_ENTHALPY;
    const inside = w < LAST_W;
    const cell = inside ? COLUMN_MAP[Math.trunc(w * COLUMN_FINENESS)] : COLUMN_CELLS - 1;
    const start = COLUMN_NODES[cell];
    const width = COLUMN_NODES[cell + 1] - start;
    const a = this.rowStart + cell * PATCH_STRIDE + property;
    const b = a + ROW_STRIDE;
    const c = a + PATCH_STRIDE;
    const d = b + PATCH_STRIDE;
    const value1 = x00 * f[c] + x10 * f[c + 1] + x01 * f[d] + x11 * f[d + 1];
    const slope1 = x00 * f[c + 2] + x10 * f[c + 3] + x01 * f[d + 2] + x11 * f[d + 3];
    if (!inside) return value1 + (w - LAST_W) * slope1;
    const value0 = x00 * f[a] + x10 * f[a + 1] + x01 * f[b] + x11 * f[b + 1];
    const slope0 = x00 * f[a + 2] + x10 * f[a + 3] + x01 * f[b + 2] + x11 * f[b + 3];
    const t = (w - start) * COLUMN_INVERSE_WIDTHS[cell];
    const u = 1 - t;
    return (
      u * u * ((1 + 2 * t) * value0 + t * width * slope0) +
      t * t * ((3 - 2 * t) * value1 - u * width * slope1)
    );
  }

  /** Its derivative by that distance. */
  slope(f: Float64Array, property: number, distanceJPerKg: number): number {
    const { x00, x10, x01, x11 } = this;
    const w = 1 + distanceJPerKg * W_PER_ENTHALPY;
    const inside = w < LAST_W;
    const cell = inside ? COLUMN_MAP[Math.trunc(w * COLUMN_FINENESS)] : COLUMN_CELLS - 1;
    const inverse = COLUMN_INVERSE_WIDTHS[cell];
    const a = this.rowStart + cell * PATCH_STRIDE + property;
    const b = a + ROW_STRIDE;
    const c = a + PATCH_STRIDE;
    const d = b + PATCH_STRIDE;
    const slope1 = x00 * f[c + 2] + x10 * f[c + 3] + x01 * f[d + 2] + x11 * f[d + 3];
    if (!inside) return slope1 * W_PER_ENTHALPY;
    const value0 = x00 * f[a] + x10 * f[a + 1] + x01 * f[b] + x11 * f[b + 1];
    const slope0 = x00 * f[a + 2] + x10 * f[a + 3] + x01 * f[b + 2] + x11 * f[b + 3];
    const value1 = x00 * f[c] + x10 * f[c + 1] + x01 * f[d] + x11 * f[d + 1];
    const t = (w - COLUMN_NODES[cell]) * inverse;
    const secant = (value1 - value0) * inverse;
    const bend = 2 * (3 * secant - 2 * slope0 - slope1) + 3 * t * (slope0 + slope1 - 2 * secant);
    return (slope0 + t * bend) * W_PER_ENTHALPY;
  }

  /** Temperature and volume fields at once, each with its derivative by the distance, into `out` [T, v, T', v']. */
  both(f: Float64Array, distanceJPerKg: number, out: Float64Array): void {
    const { x00, x10, x01, x11 } = this;
    const w = Math.min(1 + distanceJPerKg * W_PER_ENTHALPY, LAST_W);
    const excess = 1 + distanceJPerKg * W_PER_ENTHALPY - w;
    const cell = w < LAST_W ? COLUMN_MAP[Math.trunc(w * COLUMN_FINENESS)] : COLUMN_CELLS - 1;
    const inverse = COLUMN_INVERSE_WIDTHS[cell];
    const t = (w - COLUMN_NODES[cell]) * inverse;
    const start = this.rowStart + cell * PATCH_STRIDE;
    for (let i = 0; i < 2; i++) {
      const a = start + i * VOLUME;
      const b = a + ROW_STRIDE;
      const c = a + PATCH_STRIDE;
      const d = b + PATCH_STRIDE;
      const value0 = x00 * f[a] + x10 * f[a + 1] + x01 * f[b] + x11 * f[b + 1];
      const slope0 = x00 * f[a + 2] + x10 * f[a + 3] + x01 * f[b + 2] + x11 * f[b + 3];
      const value1 = x00 * f[c] + x10 * f[c + 1] + x01 * f[d] + x11 * f[d + 1];
      const slope1 = x00 * f[c + 2] + x10 * f[c + 3] + x01 * f[d + 2] + x11 * f[d + 3];
      const secant = (value1 - value0) * inverse;
      const bend = 3 * secant - 2 * slope0 - slope1;
      const twist = slope0 + slope1 - 2 * secant;
      const slope = slope0 + t * (2 * bend + 3 * t * twist);
      out[i] = value0 + (t * (slope0 + t * (bend + t * twist))) / inverse + excess * slope;
      out[i + 2] = slope * W_PER_ENTHALPY;
    }
  }

  /** d/dx of a property on the far row of the cell, straight between columns. */
  farSlope(f: Float64Array, property: number, distanceJPerKg: number): number {
    const w = Math.min(1 + distanceJPerKg * W_PER_ENTHALPY, LAST_W);
    const cell = w < LAST_W ? COLUMN_MAP[Math.trunc(w * COLUMN_FINENESS)] : COLUMN_CELLS - 1;
    const at = this.rowStart + cell * PATCH_STRIDE + ROW_STRIDE + property + 1;
    const t = (w - COLUMN_NODES[cell]) * COLUMN_INVERSE_WIDTHS[cell];
    return f[at] + t * (f[at + PATCH_STRIDE] - f[at]);
  }
}
