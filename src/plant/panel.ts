/**
 * The instruments with what they show: one lagged value each, in one small array. Truth comes in as numbers the executive
 * has read from the network; NaN means nothing is there to feel.
 */

import { shareSpec } from '../equipment/identifier';
import {
  follow,
  type Instrument,
  type InstrumentSpec,
  isAtStop,
  makeInstrument,
  shown,
} from '../equipment/instrument';
import {
  airThermometerSpec,
  gaugeSpecs,
  lineThermometerSpec,
  micronGaugeSpec,
  oilBottleSpec,
  scaleSpec,
  tankScaleSpec,
} from '../equipment/instruments';
import type { ToolId } from '../equipment/tools';
import { STEP_S } from './stepTime';

/** Order of the instruments in the array of lagged values. */
export const CHANNELS = [
  'charging-gauge',
  'low-gauge',
  'high-gauge',
  'air',
  'line',
  'scale',
  'micron-gauge',
  'recovery-scale',
  'charging-scale',
  'drained-oil',
  'gas-r134a',
  'gas-r12',
  'gas-r1234yf',
  'gas-hydrocarbon',
  'gas-air',
] as const;
export type Channel = (typeof CHANNELS)[number];

const SPECS: Readonly<Record<Channel, InstrumentSpec>> = {
  'charging-gauge': gaugeSpecs.charging,
  'low-gauge': gaugeSpecs.low,
  'high-gauge': gaugeSpecs.high,
  air: airThermometerSpec,
  line: lineThermometerSpec,
  scale: scaleSpec,
  'micron-gauge': micronGaugeSpec,
  'recovery-scale': tankScaleSpec('recovery-scale'),
  'charging-scale': tankScaleSpec('charging-scale'),
  'drained-oil': oilBottleSpec,
  'gas-r134a': shareSpec('gas-r134a'),
  'gas-r12': shareSpec('gas-r12'),
  'gas-r1234yf': shareSpec('gas-r1234yf'),
  'gas-hydrocarbon': shareSpec('gas-hydrocarbon'),
  'gas-air': shareSpec('gas-air'),
};

/** Which tool on the bench a channel belongs to. */
export const CHANNEL_TOOLS: Readonly<Record<string, ToolId>> = {
  'micron-gauge': 'micron-gauge',
  'recovery-scale': 'recovery-machine',
  'charging-scale': 'charging-tank',
  'drained-oil': 'recovery-machine',
  'gas-r134a': 'identifier',
  'gas-r12': 'identifier',
  'gas-r1234yf': 'identifier',
  'gas-hydrocarbon': 'identifier',
  'gas-air': 'identifier',
  detector: 'detector',
  soap: 'soap',
  lamp: 'uv-lamp',
};

/** Those whose range has an end that the thing read can go beyond; a share and a level have none. */
const RANGED: ReadonlySet<Channel> = new Set<Channel>([
  'charging-gauge',
  'low-gauge',
  'high-gauge',
  'air',
  'line',
  'scale',
  'micron-gauge',
]);

export interface Panel {
  /** Lagged truth by channel, SI; gauges in gauge pressure. */
  readonly lagged: Float64Array;
  /** What each has to feel now; refreshed before every step of the panel, no state of its own. */
  readonly truth: Float64Array;
  readonly instruments: readonly Instrument[];
}

/** `seed` null: instruments without error of their own. */
export function makePanel(seed: number | null): Panel {
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

/** Whether it stands at a stop and so tells nothing. */
export function isStopped(panel: Panel, index: number, trim: number): boolean {
  return RANGED.has(CHANNELS[index]) && isAtStop(panel.instruments[index], panel.lagged[index], trim);
}
