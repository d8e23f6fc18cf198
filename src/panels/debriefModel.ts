/** What the debrief is given: the scored session as plain data, and how this reader wants numbers. */
import type { Permission } from '../../shared/schema/jurisdiction';
import type { DisplayUnits } from '../instruments/displayUnits';
import type { SaturationLine } from '../instruments/saturation';
import type { Command } from '../plant/commandSpecs';
import type { GateReason } from '../scoring/gateReasons';
import type { Finding } from '../scoring/score';
import type { SuspectsLeft } from '../scoring/suspectsLeft';
import type { WeighedMeasures } from '../scoring/whatIf';
import type { Mode } from '../session/corePort';
import type { Thought } from '../session/sessionFileText';
import type { SessionModel } from './sessionModel';
import type { WhatIfModel } from './whatIfModel';

/** A finding of the score, with the mark for how many of its points were earned; idle and advice have none. */
export interface DebriefFinding extends Finding {
  readonly kind: 'all' | 'part' | 'none' | 'critical' | 'idle' | 'advised';
  /** What the place itself says about it, of a rule of the law where a place is told. */
  readonly law: Permission | null;
  /** The deed it hangs on, by its number in the log; null where something happened by itself. */
  readonly deed: number | null;
}

/** Happenings told beside the score. */
export const TRIPS = [
  'high-pressure-trip',
  'thermal-trip',
  'relief-opened',
  'liquid-slug',
  'compressor-damaged',
  'compressor-seized',
  'hose-caught',
  'hose-burned',
  'can-burst',
  'ignited',
  'decomposed',
  'cold-on-skin',
  'cold-in-eye',
] as const;
export type Trip = (typeof TRIPS)[number];

export interface DebriefDomain {
  readonly id: string;
  readonly earned: number;
  readonly possible: number;
}

export interface DebriefAction {
  readonly number: number;
  /** Its number in the log, which also counts what was taken back. */
  readonly logNumber: number;
  readonly step: number;
  readonly command: Command;
}

/** A quantity over time: seconds since arrival and values in SI (gauge pressures in Pa, kg, K). */
export interface Trace {
  readonly id: 'high' | 'low' | 'charge' | 'vent';
  readonly seconds: Float64Array;
  readonly values: Float64Array;
}

/** State points 1 to 4 by second: pressure (Pa absolute), enthalpy (J/kg), temperature (K) of each, in this order. */
export interface PointTrace {
  readonly seconds: Float64Array;
  readonly values: Float64Array;
}

export interface DebriefData {
  readonly mode: Mode;
  readonly seed: number;
  readonly scored: boolean;
  readonly score: number;
  readonly reported: number;
  readonly passed: boolean;
  readonly passMark: number;
  readonly domains: readonly DebriefDomain[];
  readonly criticalCount: number;
  /** Why gates stayed shut; empty where none did. */
  readonly gates: readonly GateReason[];
  readonly findings: readonly DebriefFinding[];
  /** Who was left after each reading; null before ghosts have weighed it, or where there is nothing to weigh. */
  readonly suspects: readonly SuspectsLeft[] | null;
  /** What the ghosts weighed, for scoring the same session tried otherwise. */
  readonly weighed: WeighedMeasures;
  /** Ghosts are at it: the score may still change. */
  readonly isWeighing: boolean;
  readonly trips: readonly { readonly id: Trip; readonly count: number; readonly firstStep: number }[];
  /** How often the trainee went back in practice, and how many hints were opened. */
  readonly wentBack: number;
  readonly hintsOpened: number;
  readonly actions: readonly DebriefAction[];
  readonly traces: readonly Trace[];
  readonly points: PointTrace;
  readonly labelKg: number;
  readonly lastStep: number;
  readonly logHash: string;
  readonly stateHash: string;
  readonly engineHash: string;
  readonly debriefText: string;
  /** What the session file holds. */
  readonly file: string;
}

export const PARTS = ['happened', 'thought', 'why', 'next'] as const;
export type Part = (typeof PARTS)[number];
export type DebriefShown = 'plot' | 'table' | 'moment' | 'suspects';

/** Where its reader stands: what is chosen stays while menu or help lie over the page. */
export interface DebriefReading {
  readonly part: () => Part;
  readonly setPart: (part: Part) => void;
  readonly shown: () => DebriefShown;
  readonly setShown: (shown: DebriefShown) => void;
  readonly place: () => Place | null;
  readonly setPlace: (place: Place | null) => void;
  /** Action of the what-if, by its number in the log. */
  readonly chosen: () => number | null;
  readonly setChosen: (logNumber: number) => void;
}

export interface DebriefModel {
  readonly title: string;
  readonly modeName: string;
  readonly data: DebriefData;
  readonly units: DisplayUnits;
  readonly saturation: SaturationLine;
  readonly nameOf: (id: string) => string;
  /** Has the loop of a moment fetched; `sessionAt` is it, null until it has come. */
  readonly askMoment: (step: number) => void;
  readonly sessionAt: () => SessionModel | null;
  /** To go on from a moment, where the mode allows it. */
  readonly onGoOn: ((step: number, deed: number | null) => void) | null;
  readonly thought: () => Thought;
  readonly onThought: (thought: Thought) => void;
  readonly whatIf: WhatIfModel;
  readonly reading: DebriefReading;
  readonly next: readonly NextJob[];
}

/** A moment looked at, and the deed it hangs on, by its number in the log. */
export interface Place {
  readonly seconds: number;
  readonly deed: number | null;
}

/** A job that practises what was lost, and what starts it. */
export interface NextJob {
  readonly title: string;
  readonly minutes: number | null;
  readonly onOpen: () => void;
}
