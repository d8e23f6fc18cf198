/**
 * The session core as the page, the command line and tests see it: one synchronous object that holds controller,
 * watches, plant and log. In the browser it lives in a worker behind the same verbs.
 */
import type { Command, IdSet, Outcome, PlantEvent } from '../plant/commandSpecs';
import type { SignalSpec } from '../plant/signalTypes';

export type Mode = 'explore' | 'practice' | 'assessed';

/** Everything needed to make a session again, to the last digit. */
export interface SessionLog {
  readonly format: 'portside-session-1';
  readonly scenarioId: string;
  readonly scenarioHash: string;
  readonly engineHash: string;
  readonly seed: number;
  readonly mode: Mode;
  readonly commands: readonly LoggedCommand[];
  readonly lastStep: number;
}

export interface LoggedCommand {
  /** Steps done when the command was given: it acts before step `step + 1`. */
  readonly step: number;
  readonly command: Command;
}

/** Why `advance` came back. */
export interface Advance {
  readonly stepsDone: number;
  /** Set when `untilNotable` stopped it: the watch that fired. */
  readonly notable: string | null;
}

export interface SessionCore {
  readonly step: number;
  readonly mode: Mode;
  /** Channel map of frames in this mode: no truth when assessed. */
  readonly channels: readonly SignalSpec[];
  send(command: Command): Outcome;
  advance(steps: number, untilNotable?: boolean): Advance;
  writeFrame(out: Float64Array): void;
  /** Everything that is not a number: changes only with commands and watch edges; `revision` says when. */
  view(): SessionView;
  log(): SessionLog;
  logHash(): string;
  stateHash(): string;
  /** Ids an argument may take now. */
  choices(set: IdSet): readonly string[];
  /** Why `send` would refuse this command now, or null. Leaves no trace. */
  wouldRefuse(
    command: Command,
  ): { readonly reason: string; readonly params: Readonly<Record<string, string>> } | null;
  /** Tells the controller that the score was made: it goes from scoring to the debrief. Not logged. */
  markScored(): readonly RegionChange[];
}

/** A region of the controller went from one state to another. */
export interface RegionChange {
  readonly region: string;
  readonly from: string;
  readonly on: string;
  readonly to: string;
}

/** Plain data for panels and the text twin. Words are ids with parameters, never sentences. */
export interface SessionView {
  readonly revision: number;
  readonly step: number;
  /** Controller state by region, e.g. `work`, `{ finding: 'looking', charging: 'idle', … }`. */
  readonly phase: 'briefing' | 'work' | 'debrief';
  readonly regions: Readonly<Record<string, string>>;
  readonly deliveries: readonly { readonly id: string; readonly done: boolean }[];
  readonly card: readonly CardLine[];
  readonly worn: readonly string[];
  readonly ports: readonly PortView[];
  readonly hoses: readonly HoseView[];
  readonly cans: readonly CanView[];
  /** Service tools that go on a hose. */
  readonly devices: readonly DeviceView[];
  /** Places of the loop whose joints are undone. */
  readonly opened: readonly string[];
  readonly sheetsRead: readonly string[];
  /** What the owner was asked about, and what was told at the hand-over. */
  readonly asked: readonly string[];
  readonly told: readonly string[];
  /** The new label, once one covers the old. */
  readonly conversionLabel: ConversionLabel | null;
  /** Latest first; for the status line and for `sit`. */
  readonly happened: readonly Happening[];
  /**
   * A stop with its explanation (practice): the clock is held and every command but two is refused. `rewind` to
   * `rewindStep` undoes the command that led to it; `begin` carries on as things stand.
   */
  readonly stopped: Stop | null;
  readonly hints: { readonly opened: number; readonly levels: number };
}

export interface ConversionLabel {
  readonly refrigerant: string;
  readonly grams: number;
  readonly oil: string;
  readonly mL: number;
}

export interface CardLine {
  readonly step: number;
  readonly kind: 'reading' | 'decision' | 'cause' | 'repair' | 'label' | 'look' | 'note';
  readonly word: string;
  readonly params: Readonly<Record<string, string>>;
  /** For a reading: SI value and unit, so the page can show it in the person's own units. */
  readonly value?: number;
  readonly unit?: string;
}

export interface PortView {
  readonly id: string;
  readonly capOn: boolean;
  /** Letter on the cap that is on; it need not be the port's own. */
  readonly capLetter: 'L' | 'H' | null;
  /** Under a cover that is on; null where there is none. */
  readonly covered: boolean | null;
  /** Across the fitting that is on it now, m. */
  readonly diameterM: number;
  readonly traced: boolean;
  readonly judged: 'low' | 'high' | null;
  readonly hose: string | null;
}

export interface HoseView {
  readonly id: string;
  /** What its coupler goes over, m; NaN where it has none. */
  readonly couplerM: number;
  readonly port: string | null;
  readonly couplerOpen: boolean;
  readonly route: readonly string[];
  readonly caught: boolean;
}

export interface CanView {
  readonly id: string;
  readonly onto: string | null;
  readonly valveSixteenths: number;
  readonly tiltDeg: number;
  readonly place: 'hand' | 'scale' | 'mat' | 'bath' | 'hot-water';
}

export interface DeviceView {
  readonly id: string;
  readonly onto: string | null;
}

export interface Happening extends PlantEvent {
  readonly step: number;
  readonly notable: boolean;
}

export interface Stop {
  readonly rule: string;
  readonly step: number;
  readonly rewindStep: number;
  /** What the rule's sentence quotes, as it stood at that moment; null where a quote is known only at the end. */
  readonly quotes: readonly Quote[] | null;
}

/** A number as a sentence quotes it: placeholder, signal it comes from, SI value and unit. */
export interface Quote {
  readonly name: string;
  readonly source: string;
  readonly value: number;
  readonly unit: string;
}
