/** Curves of a record for the debrief: at most one point a second, thinned to what a plot can show. */

import type { PointTrace, Trace } from '../panels/debriefModel';
import { STEPS_PER_SECOND } from '../session/clock';
import { indexOfSignal, type SessionRecord } from '../session/record/record';

/** More points than this no plot can show. */
const MOST_POINTS = 1500;
const QUANTITIES = ['pressurePa', 'enthalpyJPerKg', 'temperatureK'] as const;

type Written = Pick<SessionRecord, 'signals' | 'steps' | 'values'>;

/** The last row of each second, thinned evenly. */
function rowsToShow({ steps }: Written): number[] {
  const rows: number[] = [];
  for (let row = 0; row < steps.length; row++) {
    const second = Math.floor(steps[row] / STEPS_PER_SECOND);
    const nextSecond = row + 1 < steps.length ? Math.floor(steps[row + 1] / STEPS_PER_SECOND) : -1;
    if (second !== nextSecond) rows.push(row);
  }
  const stride = Math.max(1, Math.ceil(rows.length / MOST_POINTS));
  return rows.filter((_, i) => i % stride === 0 || i === rows.length - 1);
}

function traceOf(record: Written, id: Trace['id'], signal: string): Trace {
  const index = indexOfSignal(record, signal);
  const rows = rowsToShow(record);
  const width = record.signals.length;
  return {
    id,
    seconds: Float64Array.from(rows, (row) => record.steps[row] / STEPS_PER_SECOND),
    values: Float64Array.from(rows, (row) => record.values[row * width + index]),
  };
}

/** The four lanes of the debrief. */
export function tracesOf(record: Written): Trace[] {
  return [
    traceOf(record, 'high', 'highSide.gaugePressurePa'),
    traceOf(record, 'low', 'lowSide.gaugePressurePa'),
    traceOf(record, 'charge', 'loop.massKg'),
    traceOf(record, 'vent', 'vent.temperatureK'),
  ];
}

/** Twelve numbers a second: pressure, enthalpy and temperature of points 1 to 4. */
export function pointsOf(record: SessionRecord): PointTrace {
  const columns = [1, 2, 3, 4].flatMap((point) =>
    QUANTITIES.map((quantity) => indexOfSignal(record, `point${point}.${quantity}`)),
  );
  const rows = rowsToShow(record);
  const width = record.signals.length;
  return {
    seconds: Float64Array.from(rows, (row) => record.steps[row] / STEPS_PER_SECOND),
    values: Float64Array.from(
      rows.flatMap((row) => columns.map((column) => record.values[row * width + column])),
    ),
  };
}
