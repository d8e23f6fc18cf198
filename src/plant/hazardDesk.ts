/** What a person has done that can hurt or break, and what has happened of it once and for all: part of the desk. */
import type { HoseId } from '../equipment/hoses';

export const BYPASSES = ['low-switch', 'high-switch', 'tank-limit'] as const;
export type Bypass = (typeof BYPASSES)[number];

export interface HazardDesk {
  /** A gas heater burns in the room. */
  heaterOn: boolean;
  inPit: boolean;
  bypass: Record<Bypass, boolean>;
  /** Step at which the service plug came out; null while it is in. */
  isolatedAt: number | null;
  /** Hoses with a loose adapter on their coupler. */
  adapters: readonly HoseId[];
  /** Hoses with a hole burned in them. */
  burned: readonly HoseId[];
  burst: readonly string[];
  /** The sealer test: where, until which step, and what it showed last. */
  sealerTest: { port: string | null; endsAt: number; found: boolean | null };
  machineFouled: boolean;
  /** Happenings told that are told once, or once until their cause is gone. */
  told: readonly string[];
}

export function freshHazards(heaterOn: boolean): HazardDesk {
  return {
    heaterOn,
    inPit: false,
    bypass: { 'low-switch': false, 'high-switch': false, 'tank-limit': false },
    isolatedAt: null,
    adapters: [],
    burned: [],
    burst: [],
    sealerTest: { port: null, endsAt: 0, found: null },
    machineFouled: false,
    told: [],
  };
}
