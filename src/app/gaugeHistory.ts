/**
 * The last ten minutes of what instruments read and of what happened: one sample a job second, older ones forgotten, a
 * rewind cuts both back.
 */
import type { Samples } from '../panels/sessionModel';
import { STEPS_PER_SECOND } from '../session/clock';
import type { Happening } from '../session/corePort';

/** Seconds of them. */
export const KEPT_S = 600;
export const CHANNELS: readonly string[] = [
  'chargingGauge.gaugePressurePa',
  'lowGauge.gaugePressurePa',
  'highGauge.gaugePressurePa',
  'airThermometer.temperatureK',
  'lineThermometer.temperatureK',
];

/** One reading a second; values in the order of `CHANNELS`, NaN where there is none. */
export type PastMinutes = readonly { readonly step: number; readonly values: readonly number[] }[];

export interface GaugeHistory {
  add(step: number, read: (channel: string) => number): void;
  /** From what a log that was run again ends with: what was read, and the latest happenings, the latest first. */
  goOn(past: PastMinutes, happened: readonly Happening[]): void;
  /** The oldest first. */
  note(happenings: readonly Happening[]): void;
  of(channel: string): Samples;
  happened(): readonly Happening[];
}

export function gaugeHistory(): GaugeHistory {
  const seconds: number[] = [];
  const columns = CHANNELS.map((): number[] => []);
  const all = [seconds, ...columns];
  let happenings: Happening[] = [];
  let lastStep = 0;
  const add: GaugeHistory['add'] = (step, read) => {
    const second = Math.floor(step / STEPS_PER_SECOND);
    // news may be ahead of the frame they belong to: only a clock that went back takes them away
    if (step < lastStep) happenings = happenings.filter((one) => one.step <= step);
    lastStep = step;
    while (seconds.length > 0 && seconds[seconds.length - 1] > second) for (const column of all) column.pop();
    if (seconds[seconds.length - 1] === second) return;
    seconds.push(second);
    CHANNELS.forEach((channel, i) => {
      columns[i].push(read(channel));
    });
    while (seconds[0] < second - KEPT_S) for (const column of all) column.shift();
    happenings = happenings.filter((one) => one.step >= step - KEPT_S * STEPS_PER_SECOND);
  };
  return {
    add,
    goOn(past, happened) {
      for (const { step, values } of past) add(step, (channel) => values[CHANNELS.indexOf(channel)]);
      const from = lastStep - KEPT_S * STEPS_PER_SECOND;
      happenings = happened.filter(({ step }) => step >= from).reverse();
    },
    note(news) {
      happenings = [...happenings, ...news];
    },
    of(channel) {
      const i = CHANNELS.indexOf(channel);
      return { seconds, values: columns[i] ?? [] };
    },
    happened: () => happenings,
  };
}
