/** The gauges that there are, each with the hose it is on. */
import type { GaugeSource } from './GaugePanel';
import type { SessionModel } from './sessionModel';

export const GAUGE_SOURCES = {
  set: [
    { hub: 'low', face: 'low', channel: 'lowGauge.gaugePressurePa', hose: 'gauge-low' },
    { hub: 'high', face: 'high', channel: 'highGauge.gaugePressurePa', hose: 'gauge-high' },
  ],
  charging: [{ hub: 'charging', face: 'low', channel: 'chargingGauge.gaugePressurePa', hose: 'charging' }],
} as const satisfies Readonly<Record<string, readonly GaugeSource[]>>;

export const gaugesOnBench = (session: SessionModel): GaugeSource[] =>
  [...GAUGE_SOURCES.set, ...GAUGE_SOURCES.charging].filter((source) =>
    session.view().hoses.some((hose) => hose.id === source.hose),
  );
