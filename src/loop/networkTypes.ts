/**
 * What a network of vessels and links is made of, as data. A car's loop, a hose, a can and the air around them are all
 * said in these words, so equipment never needs code in the loop.
 *
 * SI throughout. Pressures are absolute. Every spec is plain JSON: the structure of a running network is a list of them.
 */
import type { RefrigerantId } from '../refrigerant/refrigerant';

/** What a vessel can hold besides the loop's own refrigerant; each is well mixed in its vessel and kept in the books. */
export const SPECIES = ['refrigerant', 'air', 'foreign', 'water', 'oil', 'sealant'] as const;
export type Species = (typeof SPECIES)[number];

/** Slot of a vessel, stable while it exists. `ROOM` is the air outside: infinite, at ambient pressure. */
export type VesselIndex = number;
export const ROOM: VesselIndex = 0;
export type LinkIndex = number;

/**
 * How a cell lets refrigerant go on to the next one.
 * `pipe`: phases slip past each other (Zivi). `pot`: phases part by gravity, so the height of its outlet decides.
 */
export type CellKind = 'pipe' | 'pot';

/** Where on a cell something is attached. A number is a height: 0 lowest, 1 highest, with the pot upright. */
export type PortHeight = 'top' | 'bottom' | 'bulk' | number;

export interface Port {
  readonly vessel: VesselIndex;
  /** Index of the cell within its vessel. */
  readonly cell: number;
  readonly height: PortHeight;
}

export interface CellSpec {
  readonly id: string;
  readonly kind: CellKind;
  readonly volumeM3: number;
  readonly wallHeatCapacityJPerK: number;
  /** Refrigerant to wall, W/K, at 40 g/s (in a pot: as it is): boiling or condensing, vapour, liquid. */
  readonly insideWPerK: readonly [number, number, number];
  /** Wall to surroundings, W/K; may be changed at any step. */
  readonly outsideWPerK: number;
  /** Id of the cell it drains to; absent: the next in the list. The last cell of a vessel is where its tree ends. */
  readonly drainsTo?: string;
  /** Velocity ratio of the phases when almost nothing flows: above 1 vapour passes the liquid, below 1 liquid drains. */
  readonly slipAtRest?: number;
  /** Pot only: height of the outlet to the next cell, 0..1, and width of diameter over height. */
  readonly outletHeight?: number;
  readonly aspect?: number;
  /** Pot only: half the height over which the outlet changes from vapour to liquid as the level passes it. */
  readonly outletBlend?: number;
  /** Where liquid stands at the start: first in a `reservoir`, then in `wet` cells (the default), never in `dry` ones. */
  readonly atRest?: 'reservoir' | 'wet' | 'dry';
  /** Pot only: share of liquid that comes with the vapour (oil bleed hole, carry-over). */
  readonly liquidBleed?: number;
  /** kg of water that a desiccant in it can hold. */
  readonly desiccantKg?: number;
}

export interface VesselSpec {
  readonly id: string;
  readonly cells: readonly CellSpec[];
  /** Share by which the volume grows per pascal: 1e-8 for a rubber hose, 0 for metal. */
  readonly elasticityPerPa?: number;
  /** Its last cell is a compressor, in which this much oil belongs, kg. */
  readonly sumpOilKg?: number;
  /** Oil spread over its walls with which their conductances hold, kg; absent: any amount. */
  readonly filmOilKg?: number;
}

/** What a vessel is filled with at the start; at rest and in equilibrium at one temperature. */
export interface Contents {
  readonly temperatureK: number;
  readonly refrigerantKg: number;
  readonly airKg?: number;
  readonly foreignKg?: number;
  readonly waterKg?: number;
  readonly oilKg?: number;
  /** Of the oil, what is in the compressor; absent: all of it where there is one. */
  readonly sumpKg?: number;
  readonly sealantKg?: number;
}

/** A long, thin bore in series with an opening: it slows gas under vacuum. */
export interface Bore {
  readonly diameterM: number;
  readonly lengthM: number;
}

/** A restriction that lets through what its area and the two pressures allow, either way. */
export interface ValveLink {
  readonly kind: 'valve';
  readonly id: string;
  readonly from: Port;
  readonly to: Port;
  /** Discharge coefficient times area when fully open, m2. */
  readonly areaM2: number;
  /** 0 shut .. 1 open; changed with `setOpening`. */
  readonly opening: number;
  readonly bore?: Bore;
}

/** As a valve, but only from `from` to `to`. */
export interface CheckLink extends Omit<ValveLink, 'kind'> {
  readonly kind: 'check';
}

/** Opens by itself when `from` is more than `opensAbovePa` over `to`, shuts under `shutsBelowPa`. */
export interface ReliefLink extends Omit<ValveLink, 'kind'> {
  readonly kind: 'relief';
  readonly opensAbovePa: number;
  readonly shutsBelowPa: number;
}

/** As a check valve, but what it feeds from has at most `setPa` behind it, whatever is in `from`. */
export interface RegulatorLink extends Omit<ValveLink, 'kind'> {
  readonly kind: 'regulator';
  /** Absolute. */
  readonly setPa: number;
}

/** Takes a volume of gas a second from `from`, down to its ultimate pressure. `opening` 1 runs, 0 stands (and is shut). */
export interface PumpLink {
  readonly kind: 'pump';
  readonly id: string;
  readonly from: Port;
  readonly to: Port;
  readonly speedM3PerS: number;
  readonly ultimatePa: number;
  readonly opening: number;
  readonly bore?: Bore;
}

/** Short tube of fixed bore, the metering device of an accumulator loop. */
export interface OrificeTubeLink {
  readonly kind: 'orificeTube';
  readonly id: string;
  readonly from: Port;
  readonly to: Port;
  readonly boreM: number;
  readonly lengthM: number;
  /** Share of the bore's area that is open. */
  readonly opening: number;
}

/** Thermostatic expansion valve; its bulb feels the refrigerant of `bulb`. */
export interface ExpansionValveLink {
  readonly kind: 'expansionValve';
  readonly id: string;
  readonly from: Port;
  readonly to: Port;
  readonly bulb: Port;
  /** What is sealed in the bulb; stays what it is, whatever is in the loop. */
  readonly bulbFluid: RefrigerantId;
  /** Discharge coefficient times area fully open, m2, and the share that never closes. */
  readonly areaM2: number;
  readonly bleedShare: number;
  readonly staticSuperheatK: number;
  readonly gradientK: number;
  readonly bulbLagS: number;
  /** Pressure over which the bulb has no liquid left (maximum operating pressure), Pa absolute. */
  readonly maximumOperatingPa: number;
  readonly opening: number;
}

/** Piston compressor; `opening` is the share of a healthy one's pumping. Speed is set with `setSpeed`. */
export interface CompressorLink {
  readonly kind: 'compressor';
  readonly id: string;
  readonly from: Port;
  readonly to: Port;
  readonly displacementM3: number;
  readonly clearance: number;
  readonly volumetricEfficiency: number;
  readonly isentropicEfficiency: number;
  /** Leak through the reeds, kg/s per pascal. */
  readonly reedLeakKgPerSPa: number;
  readonly opening: number;
}

export type LinkSpec =
  | ValveLink
  | CheckLink
  | ReliefLink
  | RegulatorLink
  | PumpLink
  | OrificeTubeLink
  | ExpansionValveLink
  | CompressorLink;

/** What exists, slot by slot; with the numbers of `state` it is the whole network. */
export interface NetworkStructure {
  readonly vessels: readonly {
    readonly slot: VesselIndex;
    readonly firstCell: number;
    readonly spec: VesselSpec;
  }[];
  readonly links: readonly { readonly slot: LinkIndex; readonly spec: LinkSpec }[];
}
