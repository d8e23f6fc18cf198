/**
 * What panels are given: one session as plain reads and a way to send commands. Reads track (Solid), so a panel repaints
 * by itself. Panels decide nothing; whoever makes this object talks to the core.
 */

import type { Place as Country, Person } from '../../shared/schema/persons';
import type { DisplayUnits } from '../instruments/displayUnits';
import type { SaturationLine } from '../instruments/saturation';
import type { Layout } from '../layout/layout';
import type { Command, IdSet } from '../plant/commandSpecs';
import type { Happening, Mode, SessionView } from '../session/corePort';
import type { RubricOutline } from './rubricOutline';

export type Lapse = 0 | 1 | 10 | 60 | 240;
/** A number is of steps. */
export type RunOn = '10s' | '1min' | '5min' | 'notable' | number;

export interface ClockState {
  /** Steps of 20 ms since arrival. */
  readonly step: number;
  readonly seconds: number;
  readonly lapse: Lapse;
  /** A run-on under way. */
  readonly runningOn: RunOn | null;
  /** The core cannot keep up with the lapse. */
  readonly behind: boolean;
}

/** A scenario as the shelf and the job card tell it. Numbers in SI. */
export interface ScenarioFacts {
  readonly id: string;
  readonly title: string;
  /** Display name of the car. */
  readonly vehicle: string;
  readonly body: 'hatch' | 'sedan' | 'pickup' | 'van';
  readonly complaint: string;
  readonly deliver: readonly { readonly id: string; readonly text: string }[];
  readonly level: number;
  readonly minutes: number;
  readonly airTemperatureK: number;
  readonly humidityPercent: number;
  /** Outside pressure, and the sun on the car. */
  readonly pressurePa: number;
  readonly sunWPerM2: number;
  readonly vehicleId: string;
  readonly site: { readonly kind: 'outdoors' | 'garage' | 'garage-with-pit'; readonly volumeM3: number };
  /** A gas heater stands in the room. */
  readonly hasHeater: boolean;
  /** What the owner says when asked, by what is asked. */
  readonly owner: Readonly<Record<string, string | undefined>>;
  readonly person: Person;
  readonly country: Country;
  /** Hints by level, opened one after another. */
  readonly hints: readonly string[];
  /** What lies on the bench besides hoses, cans, scale and thermometers, by id. */
  readonly tools: readonly string[];
}

/** One page of papers: paragraphs, then a table whose first column names the row. */
export interface Sheet {
  readonly id: string;
  readonly title: string;
  readonly paragraphs: readonly string[];
  /** Column heads; none where the rows speak for themselves. */
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface Samples {
  readonly seconds: readonly number[];
  readonly values: readonly number[];
}

/** A line for the status plate. */
export interface Notice {
  readonly icon: 'clock' | 'note' | 'cross' | 'ff';
  readonly text: string;
  /** Counts up, so that the same words show again. */
  readonly serial: number;
}

export interface ToldHappening extends Happening {
  readonly said: string;
}

export interface SessionModel {
  readonly facts: ScenarioFacts;
  readonly layout: Layout;
  readonly mode: Mode;
  readonly seed: number;
  /** Another tab holds this car; here one may only look. */
  readonly readOnly: () => boolean;
  /** This browser refused to keep something of what is done here. */
  readonly keepsNothing: () => boolean;
  readonly view: () => SessionView;
  /** Present value of a channel in its unit; NaN where there is nothing to read or no such channel. */
  readonly signal: (id: string) => number;
  /**
   * Changes with every frame, some thirty times a second, for needles and whatever else moves by itself; a signal is
   * followed by reading it, more slowly, as words are read.
   */
  readonly pulse: () => number;
  readonly clock: () => ClockState;
  readonly units: () => DisplayUnits;
  readonly saturation: () => SaturationLine | null;
  /** What is asked for, and how much each domain weighs. */
  readonly rubric: () => RubricOutline | null;
  readonly notice: () => Notice | null;
  /** The papers, in the reader's units. */
  readonly sheets: () => readonly Sheet[];
  /** Heading and text of the label under the bonnet, as drawn in the bay. */
  readonly bayLabel: () => readonly [heading: string, text: string];
  /** What the cans on the bench say is in them. */
  readonly canPrint: string;
  /** Ids an argument may take now. */
  readonly choices: (set: IdSet) => readonly string[];
  /** Where a thermometer's probe is, or detector, soap or lamp were last, by name; null while it lies on the bench. */
  readonly probeAt: (instrument: string) => string | null;
  /** The same by id. */
  readonly placeOf: (instrument: string) => string | null;
  /** What a gauge read in the last minutes: job seconds and values in its unit, a sample a second. */
  readonly history: (channel: string) => Samples;
  /** What happened in those minutes, the oldest first, each with what is said of it. */
  readonly happened: () => readonly ToldHappening[];
  /** Name of an id for a reader. */
  readonly nameOf: (id: string) => string;
  readonly send: (command: Command) => void;
  /** `why`: said once, where no hand chose it. */
  readonly setLapse: (lapse: Lapse, why?: string) => void;
  readonly runOn: (how: RunOn) => void;
}
