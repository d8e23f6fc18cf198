/**
 * What a table's node would be if the nodes before it went on smoothly: along its row the polynomial through the columns
 * before, and how far that was off in the rows before, carried on by the polynomial in the logarithm of the reduced
 * pressure. A fluid's properties are so smooth that what is off is small; only that has to be kept (tableCodec.ts).
 */
import { ln } from '../numerics/ln';

export interface NodeGrid {
  readonly rows: Float64Array;
  readonly columns: Float64Array;
  /** A row with which something new begins, if any. */
  readonly freshRow?: number;
  /** How many rows and columns back it looks, where there are as many. */
  readonly rowsBack: number;
  readonly columnsBack: number;
}

/** Goes over all nodes of `field`, row by row, and keeps in each what `settle` makes of the forecast. */
export function forecastNodes(
  field: Float64Array | Float32Array,
  { rows, columns, freshRow = rows.length, rowsBack, columnsBack }: NodeGrid,
  settle: (at: number, forecast: number) => number,
): void {
  const wide = columns.length;
  const logarithms = rows.map(ln);
  const along = Array.from(columns, (_, j) => weights(columns, j, Math.min(columnsBack, j)));
  /** By the columns before it in its own row. */
  const inRow = (row: number, column: number): number => {
    const own = along[column];
    let sum = 0;
    for (let k = 0; k < own.length; k++) sum += own[k] * field[row * wide + column - 1 - k];
    return sum;
  };
  for (let i = 0; i < rows.length; i++) {
    const before = weights(logarithms, i, Math.min(rowsBack, i < freshRow ? i : i - freshRow));
    for (let j = 0; j < wide; j++) {
      let forecast = inRow(i, j);
      for (let k = 0; k < before.length; k++) {
        const row = i - 1 - k;
        forecast += before[k] * (field[row * wide + j] - inRow(row, j));
      }
      field[i * wide + j] = settle(i * wide + j, forecast);
    }
  }
}

/** Lagrange's: what each of the `count` nodes before counts at node `at`, the nearest first. */
function weights(nodes: Float64Array, at: number, count: number): number[] {
  return Array.from({ length: count }, (_, k) => {
    let weight = 1;
    for (let other = 0; other < count; other++) {
      const node = nodes[at - 1 - other];
      if (other !== k) weight *= (nodes[at] - node) / (nodes[at - 1 - k] - node);
    }
    return weight;
  });
}
