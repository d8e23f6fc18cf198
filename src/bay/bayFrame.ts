/**
 * What the bay is told: everything it draws besides the layout. Plain data, made by the page from the session's view
 * and frame. The bay keeps nothing of it but the picture; what a person does comes back as intents.
 */
import type { BoreMm, CoupledHose, HoseId } from '../layout/layout';

export type CapLook = 'blank' | 'shape' | 'letter' | 'swapped' | 'missing';

/** Hoses whose other end goes on the tap of a can. */
export type CanInlet = 'charging' | 'utility';

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
  /** What its coupler goes over; absent where it has none. */
  readonly bore?: BoreMm;
  /** Cover 0..1 of its skin, where it is cold enough. */
  readonly frost?: number;
  readonly sweat?: number;
  /** Its end stands open, and more than a whiff comes out. */
  readonly spraying?: boolean;
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
  readonly onto?: CanInlet | null;
  /** Frost on its wall up to this share of its height; null: none. */
  readonly frostLevel: number | null;
  /** What a hand tells is left in it, in quarters. */
  readonly heft?: number;
  /** Stands on the scale. */
  readonly onScale: boolean;
  /** Read-out drawn beside it ("182 g"), already formatted; null: none. */
  readonly readout: string | null;
}

/** What the sight glass shows of its stream. */
export interface GlassFrame {
  /** By their share of the room, 0..1. */
  readonly bubbles: number;
  /** Hardly any liquid: oil runs down the glass. */
  readonly streaked: boolean;
}

/** A label in full. */
export interface LabelPrint {
  /** `none`: there is no label, and nothing to draw. */
  readonly look: 'printed' | 'conversion' | 'worn' | 'none';
  /** In small letters over the heading; none where empty. */
  readonly over: string;
  readonly heading: string;
  readonly rows: readonly (readonly [name: string, value: string])[];
  /** Name of the line that is signed by hand; none where empty. */
  readonly signed: string;
  readonly note: string;
  /** Wears the sign for what burns. */
  readonly burns: boolean;
}

export interface BayFrame {
  readonly ports: Readonly<Record<string, PortFrame>>;
  readonly hoses: readonly HoseFrame[];
  readonly can: CanFrame | null;
  /** Hoses whose end for a can lies free on the mat; the utility hose's, where nothing is said. */
  readonly ends?: readonly CanInlet[];
  readonly engineRpm: number;
  readonly clutchEngaged: boolean;
  /** By part id of the fan. */
  readonly fansTurning: Readonly<Record<string, boolean>>;
  /** Cover 0..1 by id of a line or part. */
  readonly frost: Readonly<Record<string, number>>;
  readonly sweat: Readonly<Record<string, number>>;
  /** Air-side dirt of the condenser, 0..1. */
  readonly condenserDirt: number;
  readonly glass: GlassFrame;
  /** Oil to be seen at places of the loop, 0..1, by place. */
  readonly stains: Readonly<Record<string, number>>;
  /** Where soap was put last, and how it foams, 0..8; null while it has had no time yet. */
  readonly soap: { readonly at: string; readonly level: number | null } | null;
  /** Where the lamp shines, and what glows there, 0..8. */
  readonly glow: { readonly at: string; readonly level: number } | null;
  /** Share of its full speed that a fan turns with, by part id. */
  readonly fanSpeeds: Readonly<Record<string, number>>;
  /** Speed of the clutch's hub over its pulley's. */
  readonly hubSpeed: number;
  /** What is looked at closely now: part, line or port. */
  readonly looked: string | null;
  /** Lines and parts marked as traced or chosen. */
  readonly marked: readonly string[];
  readonly keepClearShown: boolean;
  /** Something taken from the bench or held over from the last gesture ("can", "coupler:low"), or null. */
  readonly held: string | null;
  /** No part names, no line names: ports are told by bore and place. */
  readonly assessed: boolean;
  /** The two fields of the under-hood label. */
  readonly label: readonly [heading: string, text: string];
  /** The same as it reads from near. */
  readonly print: LabelPrint;
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
    glass: { bubbles: 0, streaked: false },
    stains: {},
    soap: null,
    glow: null,
    fanSpeeds: {},
    hubSpeed: 1,
    looked: null,
    marked: [],
    keepClearShown: false,
    held: null,
    assessed: false,
    label: ['', ''],
    print: { look: 'none', over: '', heading: '', rows: [], signed: '', note: '', burns: false },
  };
}
