/**
 * Rows as far as they are needed: every suspect is put through the first stage, and through a further one as long as it is
 * not parted from every suspect of another cause. What parts two cars goes on parting them (`spreadsTogether` counts each
 * channel where it tells most), so no pair is lost by it. Who is `always` read is put through all.
 */
import type { GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import { type Row, rowOf } from './rowOf';
import { rowsApart } from './rowsApart';
import { PARTED, spreadsTogether } from './spreadsTogether';

/** `onBench` by probe of the forecast. */
export function rowsByStage(
  specs: readonly GhostSpec[],
  forecast: Forecast,
  onBench: readonly boolean[],
  atmospherePa: number,
  always: (spec: GhostSpec) => boolean,
): readonly Row[] {
  const { probes, stages } = forecast;
  const bench = probes.filter((_, at) => onBench[at]);
  const isAlike = (a: Row, b: Row): boolean => {
    const spreads = rowsApart(probes, a, b, atmospherePa).filter((_, at) => onBench[at]);
    return spreadsTogether(bench, spreads) < PARTED;
  };
  let rows = specs.map((spec) => rowOf(spec, forecast, probes, 1));
  for (let done = 1; done < stages.length; done++) {
    const open = rows.filter((row) => row.stages === done);
    const goesOn = (row: Row, at: number): boolean =>
      row.stages === done &&
      (always(specs[at]) || open.some((other) => other.cause !== row.cause && isAlike(row, other)));
    const going = rows.map(goesOn);
    rows = rows.map((row, at) => (going[at] ? rowOf(specs[at], forecast, probes, done + 1) : row));
  }
  return rows;
}
