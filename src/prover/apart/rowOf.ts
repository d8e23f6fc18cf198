/** What one suspect would show at every test, and how far its thermometers went while they were watched. */
import type { GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import type { Probe } from '../forecast/probe';

export interface Row {
  readonly cause: string;
  readonly severity: number;
  /** By probe, SI; NaN where there is nothing to read. */
  readonly values: readonly number[];
  /** By probe, K. */
  readonly wanders: readonly number[];
}

export const rowOf = (spec: GhostSpec, forecast: Forecast, probes: readonly Probe[]): Row => ({
  cause: spec.cause,
  severity: spec.severity,
  values: probes.map((probe) => forecast.shows(spec, probe)),
  wanders: probes.map((probe) => forecast.wanders(spec, probe)),
});
