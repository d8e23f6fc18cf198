/**
 * What a drill bay is: a layout that was made up, the loop in it, honest pipes that are no part of the loop, and a
 * question about a port. Everything follows from seed and level.
 */
import type { Layout, PointMm, RectMm } from '../layout';

export const DRILL_LEVELS = 4;
export type DrillLevel = 1 | 2 | 3 | 4;

export type Side = 'low' | 'high';
export type Metering = 'valve' | 'orifice';
/** How the engine lies, and so where the compressor sits. */
export type EngineLie = 'across' | 'along-left' | 'along-right';

/** What lies on the way along a line. */
export type DrillPart =
  | 'compressor'
  | 'condenser'
  | 'drier'
  | 'valve'
  | 'orifice'
  | 'evaporator'
  | 'accumulator'
  | 'block'
  | 'union'
  | 'muffler'
  | 'glass'
  | 'switch'
  | 'filter';

/** Pipes of other systems. Each begins and ends where such a pipe does. */
export type DecoyKind = 'heater' | 'radiator' | 'coolant' | 'steering' | 'fuel' | 'brake';

export interface Decoy {
  readonly line: string;
  readonly kind: DecoyKind;
}

/** What is on a port: a plain cap, one with the letter of its side, one with the other's, or none. */
export type DrillCap = 'blank' | 'letter' | 'swapped' | 'missing';

export interface DrillPort {
  /** Id in the layout. */
  readonly id: string;
  readonly letter: string;
  /** Null for a fitting that is not the loop's. */
  readonly side: Side | null;
  readonly cap: DrillCap;
}

/** A panel that can be lifted; while it lies, nothing under it is in view. */
export interface DrillCover {
  readonly id: string;
  readonly rect: RectMm;
}

export type DrillQuestion =
  | { readonly kind: 'side'; readonly port: string }
  | { readonly kind: 'which'; readonly ports: readonly string[] };

export interface DrillBay {
  readonly seed: number;
  readonly level: DrillLevel;
  readonly metering: Metering;
  readonly engine: EngineLie;
  readonly layout: Layout;
  /** What each part of the loop is, by its id in the layout. */
  readonly loopParts: Readonly<Record<string, DrillPart>>;
  readonly decoys: readonly Decoy[];
  readonly covers: readonly DrillCover[];
  readonly ports: readonly DrillPort[];
  readonly question: DrillQuestion;
}

/** A run of the loop from part to part before it is cut into lines. */
export interface LoopRun {
  readonly id: 'suction' | 'evap-out' | 'discharge' | 'drier-in' | 'liquid';
  readonly side: Side;
  readonly from: string;
  readonly to: string;
  readonly diameterMm: number;
  readonly way: readonly PointMm[];
  readonly overBeam: boolean;
  readonly z: number;
}
