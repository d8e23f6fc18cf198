/** The last ten minutes of what the gauges read: one sample a job second, older ones forgotten, a rewind cuts it back. */
import type { Samples } from '../panels/sessionModel';
import { STEPS_PER_SECOND } from '../session/clock';

const KEPT_S = 600;
const CHANNELS: readonly string[] = [
  'chargingGauge.gaugePressurePa',
  'lowGauge.gaugePressurePa',
  'highGauge.gaugePressurePa',
];

export interface GaugeHistory {
  add(step: number, read: (channel: string) => number): void;
  of(channel: string): Samples;
}

export function gaugeHistory(): GaugeHistory {
  const seconds: number[] = [];
  const columns = CHANNELS.map((): number[] => []);
  const all = [seconds, ...columns];
  return {
    add(step, read) {
      const second = Math.floor(step / STEPS_PER_SECOND);
      while (seconds.length > 0 && seconds[seconds.length - 1] > second)
        for (const column of all) column.pop();
      if (seconds[seconds.length - 1] === second) return;
      seconds.push(second);
      CHANNELS.forEach((channel, i) => {
        columns[i].push(read(channel));
      });
      while (seconds[0] < second - KEPT_S) for (const column of all) column.shift();
    },
    of(channel) {
      const i = CHANNELS.indexOf(channel);
      return { seconds, values: columns[i] ?? [] };
    },
  };
}
