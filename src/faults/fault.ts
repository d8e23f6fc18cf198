/**
 * What a fault is. Severity runs from 0, sound, to 1, the worst met in practice, and stands for one named physical
 * quantity. A fault changes what the loop holds at the start, what something sound still does, or opens a way out; every
 * reading follows from the model. Edits are products, sums, least or most, so two faults act the same in either order.
 */
import type { EditName } from '../loop/car/carNumbers';
import type { VehicleData } from '../loop/car/vehicles';
import type { ForeignId } from '../loop/foreign';
import type { ValveLink } from '../loop/networkTypes';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import type { LeakPlace } from './leakPlaces';

/** Against the same car sound: up, down, or the same. `either` where sources or cars differ: nobody may be scored on it. */
export type Sign = 'up' | 'down' | 'same' | 'either';
export type Channel = 'low' | 'high' | 'vent' | 'superheat' | 'subcooling' | 'cycling';

/** Signs on a car with an orifice tube, and on one with an expansion valve. */
export interface Signs {
  readonly 'orifice-tube': Partial<Readonly<Record<Channel, Sign>>>;
  readonly 'expansion-valve': Partial<Readonly<Record<Channel, Sign>>>;
}

/** What the loop is filled with at the start; faults multiply or add. */
export interface Filling {
  readonly refrigerant: RefrigerantId;
  readonly chargeKg: number;
  readonly airKg: number;
  readonly waterKg: number;
  /** Over the oil that belongs in it; negative where some is missing. */
  readonly extraOilKg: number;
  /** By its share of the charge. */
  readonly foreign?: { readonly fluid: ForeignId; readonly share: number };
}

/** Nothing but this much of one refrigerant. */
export const purely = (refrigerant: RefrigerantId, chargeKg: number): Filling => ({
  refrigerant,
  chargeKg,
  airKg: 0,
  waterKg: 0,
  extraOilKg: 0,
});

/** What a car has to have for a fault of it, by the name that says why there can be none. */
export const FAULT_NEEDS = [
  'bulb',
  'clutch',
  'coil-switch',
  'drier',
  'electric-fan',
  'expansion-valve',
  'orifice-tube',
] as const;
export type FaultNeed = (typeof FAULT_NEEDS)[number];

export interface Fault {
  readonly id: string;
  applies(vehicle: VehicleData): boolean;
  /** There where it does not apply to every car. */
  readonly needs?: FaultNeed;
  readonly quantity: {
    readonly name: string;
    /** SI, `1` for a share. */
    readonly unit: string;
    /** Value at a severity of 0..1. */
    at(severity: number): number;
  };
  readonly contents?: (filling: Filling, severity: number, vehicle: VehicleData, gas?: ForeignId) => Filling;
  /** Whether a scenario may say which gas it brings in. */
  readonly takesGas?: true;
  /** Edits of the car's numbers: `EDITS` says what is sound and how two meet. */
  readonly parameters?: (
    severity: number,
    vehicle: VehicleData,
  ) => Partial<Readonly<Record<EditName, number>>>;
  /** Ways out that it opens, at a place of the loop. */
  readonly links?: (severity: number, site: LeakPlace) => readonly ValveLink[];
  /** Where `links` are when nobody says: a place of the loop (`leakPlaces`). */
  readonly usualSite?: string;
  /** Whether it can be there; anywhere, where nothing is said. */
  readonly canBeAt?: (place: LeakPlace) => boolean;
  /** `search`: no reading tells it from a car that holds too little, so nobody is to suspect it by readings. */
  readonly toldBy?: 'search';
  /** Parts of the bay whose renewal takes it away; empty when it takes a service of the charge. */
  readonly clearedBy: readonly string[];
  /** Parts whose cleaning takes it away as well. */
  readonly cleanedAt?: readonly string[];
  readonly excludes: readonly string[];
  /** At `signs.severity`, 32 °C, windows open, 1,500 rpm. */
  readonly signs: Signs & { readonly severity: number };
}

/** A fault in a car: how bad, and where if it matters. */
export interface ActiveFault {
  readonly id: string;
  readonly severity: number;
  readonly site?: string;
  /** Which gas, of a fault that mixes one in. */
  readonly gas?: ForeignId;
}
