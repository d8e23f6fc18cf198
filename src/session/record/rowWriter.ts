/** Rows of a record as they come: a table of numbers that grows. */

import type { Moment, SignalTable } from '../conditions/moment';
import { movesByItself } from '../conditions/movesByItself';

export interface Rows {
  readonly steps: Int32Array;
  readonly values: Float64Array;
}

export interface RowWriter {
  /** Step of the last row, -1 while there is none. */
  readonly lastStep: number;
  /**
   * Copies the moment; gives the number of the new row. `still`: nothing happened since the last row was written, so what
   * does not move by itself stands as it stands there.
   */
  write(step: number, moment: Moment, still: boolean): number;
  readonly count: number;
  /** Takes over rows `from` to `to` of another such table. */
  copy(other: Rows, from: number, to: number): void;
  /** Forgets all rows. */
  clear(): void;
  /** What is written by now, not copied; it holds until more is written. */
  seen(): Rows;
  steps(): Int32Array;
  values(): Float64Array;
}

const FIRST_ROWS = 1024;

export function rowWriter({ signals }: SignalTable): RowWriter {
  const width = signals.length;
  const all = Int32Array.from(signals.keys());
  const moving = all.filter((index) => movesByItself(signals[index]));
  let steps = new Int32Array(FIRST_ROWS);
  let values = new Float64Array(FIRST_ROWS * width);
  let rowCount = 0;
  const grow = (least: number): void => {
    const length = Math.max(2 * steps.length, least);
    const widerSteps = new Int32Array(length);
    const widerValues = new Float64Array(length * width);
    widerSteps.set(steps);
    widerValues.set(values);
    steps = widerSteps;
    values = widerValues;
  };
  return {
    get lastStep() {
      return rowCount === 0 ? -1 : steps[rowCount - 1];
    },
    write(step, moment, still) {
      if (rowCount === steps.length) grow(rowCount + 1);
      steps[rowCount] = step;
      const at = rowCount * width;
      const isStill = still && rowCount > 0;
      if (isStill) values.copyWithin(at, at - width, at);
      const columns = isStill ? moving : all;
      for (let i = 0; i < columns.length; i++) values[at + columns[i]] = moment.value(columns[i]);
      return rowCount++;
    },
    get count() {
      return rowCount;
    },
    copy(other, from, to) {
      const end = rowCount + to - from;
      if (end > steps.length) grow(end);
      steps.set(other.steps.subarray(from, to), rowCount);
      values.set(other.values.subarray(from * width, to * width), rowCount * width);
      rowCount = end;
    },
    clear() {
      rowCount = 0;
    },
    seen: () => ({ steps: steps.subarray(0, rowCount), values: values.subarray(0, rowCount * width) }),
    steps: () => steps.slice(0, rowCount),
    values: () => values.slice(0, rowCount * width),
  };
}
