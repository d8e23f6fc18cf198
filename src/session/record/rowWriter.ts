/** Rows of a record as they come: a table of numbers that grows. */
import type { Moment } from '../conditions/moment';

export interface RowWriter {
  /** Step of the last row, -1 while there is none. */
  readonly lastStep: number;
  /** Copies the moment; gives the number of the new row. */
  write(step: number, moment: Moment): number;
  steps(): Int32Array;
  values(): Float64Array;
}

const FIRST_ROWS = 1024;

export function rowWriter(width: number): RowWriter {
  let steps = new Int32Array(FIRST_ROWS);
  let values = new Float64Array(FIRST_ROWS * width);
  let rowCount = 0;
  const grow = (): void => {
    const widerSteps = new Int32Array(2 * steps.length);
    const widerValues = new Float64Array(2 * values.length);
    widerSteps.set(steps);
    widerValues.set(values);
    steps = widerSteps;
    values = widerValues;
  };
  return {
    get lastStep() {
      return rowCount === 0 ? -1 : steps[rowCount - 1];
    },
    write(step, moment) {
      if (rowCount === steps.length) grow();
      steps[rowCount] = step;
      const at = rowCount * width;
      for (let i = 0; i < width; i++) values[at + i] = moment.value(i);
      return rowCount++;
    },
    steps: () => steps.slice(0, rowCount),
    values: () => values.slice(0, rowCount * width),
  };
}
