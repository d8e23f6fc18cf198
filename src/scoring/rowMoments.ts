/** Rows of a record as moments, so that a rule reads a record as a watch reads the running session. */
import type { Moment } from '../session/conditions/moment';
import type { RecordedEvent, SessionRecord } from '../session/record/record';

export interface RowMoments {
  readonly count: number;
  /** The same object each time, moved to `row`. */
  at(row: number): Moment;
}

const NOTHING: readonly RecordedEvent[] = [];

export function rowMoments({ steps, values, signals, events }: SessionRecord): RowMoments {
  const eventsOf = new Map<number, RecordedEvent[]>();
  for (const event of events) {
    const list = eventsOf.get(event.row);
    if (list) list.push(event);
    else eventsOf.set(event.row, [event]);
  }
  const width = signals.length;
  let row = 0;
  const moment: Moment = {
    value: (index) => values[row * width + index],
    get events() {
      return eventsOf.get(row) ?? NOTHING;
    },
  };
  return {
    count: steps.length,
    at(wanted) {
      row = wanted;
      return moment;
    },
  };
}
