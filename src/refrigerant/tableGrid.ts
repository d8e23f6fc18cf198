/**
 * Where the nodes of the run-time tables lie, so that the cell of a value is found without a logarithm, that of a
 * pressure from the bits of the double: an octave (power of two) is cut into equal parts, finer towards the critical point and the dome.
 *
 * Saturation, pressure: x = p * 2^22 / top, from 2^4 to 2^22, with top = 0.985 of the critical pressure at 2^22.
 * Patch rows, the same x, coarser and on to 2^24. Up to the top the dome's edges move with the row; over it they stay
 * where they are at the top, so the row at the top stands twice and the cell between the two is never used.
 * Columns, enthalpy: w = 1 + (distance from the dome's edge) / 20 kJ/kg, from 1 to 16, away from the dome on either side.
 */
export const TOP_SHARE_OF_CRITICAL = 0.985;
export const TOP_REDUCED = 4194304;
export const COLUMN_UNIT_J_PER_KG = 20000;

const LOWEST_OCTAVE = 4;
const OCTAVES_TO_TOP = 18;
/** Parts of each octave of pressure, from the lowest up; the last two of the rows are over the top. */
const SATURATION_PARTS = [8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 8, 16, 16, 16, 32];
const ROW_PARTS = [2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 4, 4, 4, 4, 8, 8, 16, 32, 4, 4];
const COLUMN_PARTS = [4, 4, 4, 8];
const FINEST_PARTS = 32;
/** Bits of the high word below the finest part. */
export const PART_SHIFT = 15;

/** Reduced pressures of the saturation line's nodes. */
export const SATURATION_NODES: Float64Array = octaveNodes(SATURATION_PARTS, 16);
export const SATURATION_CELLS = SATURATION_NODES.length - 1;
/** Cell by (high word >>> PART_SHIFT) - ROW_MAP_OFFSET, as for the rows. */
export const SATURATION_MAP: Uint16Array = cellMap(SATURATION_PARTS, OCTAVES_TO_TOP);

/** Reduced pressures of the rows. */
export const ROW_NODES: Float64Array = rowNodes();
/** The last row up to the top; the next one is the same pressure again. */
export const TOP_ROW = sum(ROW_PARTS.slice(0, OCTAVES_TO_TOP));
export const LAST_ROW = ROW_NODES.length - 1;
/** Cell by (high word >>> PART_SHIFT) - ROW_MAP_OFFSET. */
export const ROW_MAP: Uint16Array = cellMap(ROW_PARTS, OCTAVES_TO_TOP);
export const ROW_MAP_OFFSET = (1023 + LOWEST_OCTAVE) * FINEST_PARTS;

/** w of the columns. */
export const COLUMN_NODES: Float64Array = octaveNodes(COLUMN_PARTS, 1);
export const COLUMN_CELLS = COLUMN_NODES.length - 1;
/** Column cell by the whole part of w times `COLUMN_FINENESS`: every column lies on such a step. */
export const COLUMN_FINENESS = 4;
export const COLUMN_MAP: Uint16Array = columnMap();

/** One over the width of each cell. */
export const SATURATION_INVERSE_WIDTHS: Float64Array = inverseWidths(SATURATION_NODES);
export const ROW_INVERSE_WIDTHS: Float64Array = inverseWidths(ROW_NODES);
export const COLUMN_INVERSE_WIDTHS: Float64Array = inverseWidths(COLUMN_NODES);

function inverseWidths(nodes: Float64Array): Float64Array {
  return Float64Array.from({ length: nodes.length - 1 }, (_, i) => 1 / (nodes[i + 1] - nodes[i]));
}

function rowNodes(): Float64Array {
  const below = octaveNodes(ROW_PARTS.slice(0, OCTAVES_TO_TOP), 16);
  const above = octaveNodes(ROW_PARTS.slice(OCTAVES_TO_TOP), TOP_REDUCED);
  return Float64Array.from([...below, ...above]);
}

function octaveNodes(parts: readonly number[], first: number): Float64Array {
  const nodes: number[] = [];
  let start = first;
  for (const count of parts) {
    for (let i = 0; i < count; i++) nodes.push(start * (1 + i / count));
    start *= 2;
  }
  nodes.push(start);
  return Float64Array.from(nodes);
}

/** Cell of each finest part; one cell number is left out before octave `gapAt`. */
function cellMap(parts: readonly number[], gapAt: number): Uint16Array {
  const map = new Uint16Array(parts.length * FINEST_PARTS);
  let cell = 0;
  parts.forEach((count, octave) => {
    if (octave === gapAt) cell += 1;
    for (let i = 0; i < FINEST_PARTS; i++)
      map[octave * FINEST_PARTS + i] = cell + Math.floor((i * count) / FINEST_PARTS);
    cell += count;
  });
  return map;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function columnMap(): Uint16Array {
  const map = new Uint16Array(COLUMN_NODES[COLUMN_CELLS] * COLUMN_FINENESS);
  for (let cell = 0; cell < COLUMN_CELLS; cell++) {
    map.fill(cell, COLUMN_NODES[cell] * COLUMN_FINENESS, COLUMN_NODES[cell + 1] * COLUMN_FINENESS);
  }
  return map;
}
