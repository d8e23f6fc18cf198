/** What one suspect would show at every test, and how far its thermometers went while they were watched. */
import type { GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import type { Probe } from '../forecast/probe';

export interface Row {
  readonly cause: string;
  readonly severity: number;
  /** How many stages it was put through. */
  readonly stages: number;
  /** By probe, SI; NaN where there is nothing to read, and where it was not read. */
  readonly values: readonly number[];
  /** By probe, K. */
  readonly wanders: readonly number[];
}

/** All stages where nothing else is asked. */
export function rowOf(
  spec: GhostSpec,
  forecast: Forecast,
  probes: readonly Probe[],
  stages = forecast.stages.length,
): Row {
  const read = new Set(forecast.stages.slice(0, stages).map(({ id }) => id));
  return {
    cause: spec.cause,
    severity: spec.severity,
    stages,
    values: probes.map((probe) => (read.has(probe.stage) ? forecast.shows(spec, probe) : Number.NaN)),
    wanders: probes.map((probe) => (read.has(probe.stage) ? forecast.wanders(spec, probe) : 0)),
  };
}
