/**
 * What the bay is told: everything it draws besides the layout. Plain data, made by the page from the session's view
 * and frame. The bay keeps nothing of it but the picture; what a person does comes back as intents.
 */
import type { BoreMm, CoupledHose, HoseId } from '../layout/layout';

export type CapLook = 'blank' | 'shape' | 'letter' | 'swapped' | 'missing';

export interface PortFrame {
  readonly cap: CapLook;
  /** Cap on a strap; with the cap off it hangs beside the port. */
  readonly strap: boolean;
  /** Across the fitting on it now, where that is not what the car was built with. */
  readonly bore?: BoreMm;
  /** Under a cover that is on. */
  readonly covered?: boolean;
}

export interface HoseFrame {
  readonly id: HoseId;
  /** The port its coupler stands on, or null while it is loose on the mat. */
  readonly port: string | null;
  /** Knob in, core pressed. Only meaningful on a port. */
  readonly open: boolean;
  /** Zones it lies in, from the port to the gauge edge. */
  readonly route: readonly string[];
  /** Caught by the fan or belt. */
  readonly caught: boolean;
}

export type CoupledHoseFrame = HoseFrame & { readonly id: CoupledHose };

export const hasCoupler = (hose: HoseFrame): hose is CoupledHoseFrame => hose.id !== 'utility';

export interface CanFrame {
  readonly id: string;
  /** Refrigerant printed on it. */
  readonly print: string;
  /** 0 upright, 180 inverted. */
  readonly tiltDeg: number;
  /** 0 shut, 16 fully open. */
  readonly valveSixteenths: number;
  /** A hose leads from its tap. */
  readonly mounted: boolean;
  /** Which one; by itself the utility hose where there is one, else the charging hose. */
  readonly onto?: 'charging' | 'utility' | null;
  /** Frost on its wall up to this share of its height; null: none. */
  readonly frostLevel: number | null;
  /** Stands on the scale. */
  readonly onScale: boolean;
  /** Read-out drawn beside it ("182 g"), already formatted; null: none. */
  readonly readout: string | null;
}

export interface BayFrame {
  readonly ports: Readonly<Record<string, PortFrame>>;
  readonly hoses: readonly HoseFrame[];
  readonly can: CanFrame | null;
  readonly engineRpm: number;
  readonly clutchEngaged: boolean;
  /** By part id of the fan. */
  readonly fansTurning: Readonly<Record<string, boolean>>;
  /** Cover 0..1 by id of a line or part. */
  readonly frost: Readonly<Record<string, number>>;
  readonly sweat: Readonly<Record<string, number>>;
  /** Air-side dirt of the condenser, 0..1. */
  readonly condenserDirt: number;
  /** Share of bubbles in the sight glass, 0..1. */
  readonly bubbles: number;
  /** Lines and parts marked as traced or chosen. */
  readonly marked: readonly string[];
  readonly keepClearShown: boolean;
  /** Something taken from the bench or held over from the last gesture ("can", "coupler:low"), or null. */
  readonly held: string | null;
  /** No part names, no line names: ports are told by bore and place. */
  readonly assessed: boolean;
  /** The two fields of the under-hood label. */
  readonly label: readonly [heading: string, text: string];
}

/** A bay at rest: caps on, nothing connected, engine off. */
export function stillFrame(portIds: readonly string[]): BayFrame {
  return {
    ports: Object.fromEntries(portIds.map((id) => [id, { cap: 'blank', strap: false } as const])),
    hoses: [],
    can: null,
    engineRpm: 0,
    clutchEngaged: false,
    fansTurning: {},
    frost: {},
    sweat: {},
    condenserDirt: 0,
    bubbles: 0,
    marked: [],
    keepClearShown: false,
    held: null,
    assessed: false,
    label: ['', ''],
  };
}
