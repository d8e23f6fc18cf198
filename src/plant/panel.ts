/**
 * The instruments with what they show: one lagged value each, in one small array. Truth comes in as numbers the executive
 * has read from the network; NaN means nothing is there to feel.
 */
import { follow, type Instrument, type InstrumentSpec, makeInstrument, shown } from '../equipment/instrument';
import { airThermometerSpec, gaugeSpecs, lineThermometerSpec, scaleSpec } from '../equipment/instruments';
import { STEP_S } from './stepTime';

/** Order of the instruments in the array of lagged values. */
export const CHANNELS = ['charging-gauge', 'low-gauge', 'high-gauge', 'air', 'line', 'scale'] as const;
export type Channel = (typeof CHANNELS)[number];

const SPECS: Readonly<Record<Channel, InstrumentSpec>> = {
  'charging-gauge': gaugeSpecs.charging,
  'low-gauge': gaugeSpecs.low,
  'high-gauge': gaugeSpecs.high,
  air: airThermometerSpec,
  line: lineThermometerSpec,
  scale: scaleSpec,
};

export interface Panel {
  /** Lagged truth by channel, SI; gauges in gauge pressure. */
  readonly lagged: Float64Array;
  /** What each has to feel now; refreshed before every step of the panel, no state of its own. */
  readonly truth: Float64Array;
  readonly instruments: readonly Instrument[];
}

export function makePanel(seed: number): Panel {
  const instruments = CHANNELS.map((channel) => makeInstrument(SPECS[channel], seed, STEP_S));
  const lagged = new Float64Array(CHANNELS.length).fill(Number.NaN);
  return { lagged, truth: new Float64Array(CHANNELS.length), instruments };
}

/** One step of every instrument towards `truth`, in the order of `CHANNELS`. */
export function followAll(panel: Panel, truth: Float64Array): void {
  const { lagged, instruments } = panel;
  for (let i = 0; i < instruments.length; i++) lagged[i] = follow(instruments[i], lagged[i], truth[i]);
}

/** What the instrument shows, SI; `trim` is what zeroing has taken off. */
export function shownOn(panel: Panel, index: number, trim: number): number {
  return shown(panel.instruments[index], panel.lagged[index], trim);
}
