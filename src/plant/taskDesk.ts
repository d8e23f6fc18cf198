/** What a person has found out, written, converted, arranged and told, as plain data: part of the desk. */

import type { OilKind } from '../equipment/oils';
import type { TemperatureSetting } from '../equipment/temperatureControl';

export const GASES = ['R-12', 'R-134a', 'R-1234yf', 'mixed', 'unknown'] as const;
export const CLUTCH_DOINGS = ['turning', 'standing', 'slipping', 'cycling'] as const;
export type ClutchDoing = (typeof CLUTCH_DOINGS)[number];
export const SUMS = ['charge', 'net', 'cans', 'remainder', 'hose', 'oil'] as const;
export type SumOf = (typeof SUMS)[number];
export const TOLD = [
  'all-proven',
  'charge-not-proven',
  'leak-not-found',
  'fault-remains',
  'do-not-run',
  'goes-to-licensed',
] as const;

export interface Conversion {
  /** Old ports put out of use for good. */
  disabled: string[];
  sealsRenewed: boolean;
  cutOut: boolean;
  /** What the old label said, as written down. */
  old: { kg: number; m3: number } | null;
  label: { refrigerant: string; kg: number; oil: OilKind; m3: number } | null;
}

export interface TaskDesk {
  chocked: boolean;
  temperature: TemperatureSetting;
  conversion: Conversion;
  /** Oil in loop and hoses by kind, kg, as of the last time anything was added; and how much of it came from cans. */
  oil: { kg: Record<OilKind, number>; fromCansKg: number };
  /** Oil that left with old parts and in the licensed person's tank, kg: what has to be given back. */
  oilOutKg: number;
  /** What is written on a can as being left in it, kg. */
  canMarksKg: Record<string, number>;
  stored: string[];
  /** Oil in each can when it was last looked at, kg: what came out carries the can's dye along. */
  canOilKg: Record<string, number>;
  /** Someone licensed is at work until this step; what they took out, once they are done. */
  licensed: { untilStep: number } | null;
  licensedKg: number | null;
  /** The loop has been empty, so that what was weighed in since is all there is. */
  wasEmpty: boolean;
  /** A scale was read since, with refrigerant in the loop. */
  weighed: boolean;
  /** Step since which engine, blower, windows and doors stand as the service information asks. */
  testSince: number | null;
}

export function freshTasks(temperature: TemperatureSetting): TaskDesk {
  return {
    chocked: false,
    temperature,
    conversion: { disabled: [], sealsRenewed: false, cutOut: false, old: null, label: null },
    oil: { kg: { mineral: 0, PAG: 0, POE: 0 }, fromCansKg: 0 },
    oilOutKg: 0,
    canMarksKg: {},
    stored: [],
    canOilKg: {},
    licensed: null,
    licensedKg: null,
    wasEmpty: false,
    weighed: false,
    testSince: null,
  };
}
