/**
 * Everything a person has set, put or written, as plain data: positions of valves, caps, couplers, cans, probes and
 * controls. It changes with commands only (and when a hose is caught); the model's numbers stand elsewhere.
 */
import type { HoseId } from '../equipment/hoses';
import type { GaugeId } from '../equipment/instruments';
import type { HazardDesk } from './hazardDesk';
import type { SearchDesk } from './searchDesk';
import type { ServiceDesk } from './serviceDesk';
import type { TaskDesk } from './taskDesk';

export type Place = 'hand' | 'scale' | 'mat' | 'bath' | 'hot-water';

export interface HoseOnDesk {
  port: string | null;
  /** Coupler valve turned in, pin on the core. */
  open: boolean;
  /** Ids of the zones it lies in, from the port outwards. */
  route: readonly string[];
  caught: boolean;
  purging: boolean;
  /** Let go with pressure in it: its end is open to the air. */
  endOpen: boolean;
  /** Steps it has lain in a place where something turns. */
  dangerSteps: number;
}

export interface CanOnDesk {
  onto: HoseId | null;
  /** Sixteenths of a turn, 0 shut. */
  turn: number;
  tiltDeg: number;
  place: Place;
  /** Step at which the last shake ends. */
  shakenUntil: number;
}

export interface Desk {
  /** `overall`: close-fitting, no rings, hair tied. */
  worn: { goggles: boolean; gloves: boolean; overall: boolean };
  doorOpen: boolean;
  engineRpm: number;
  acOn: boolean;
  blower: number;
  windowsOpen: boolean;
  recirculated: boolean;
  caps: Record<string, boolean>;
  /** Letter on a cap, where it has one: it need not be the port's own. */
  capLetters: Record<string, 'L' | 'H'>;
  /** Whether the cover is on, for ports that lie under one. */
  covers: Record<string, boolean>;
  /** Ports that wear a conversion's permanent R-134a fitting over their own. */
  refitted: string[];
  hoses: Partial<Record<HoseId, HoseOnDesk>>;
  manifold: { low: number; high: number };
  cans: Record<string, CanOnDesk>;
  probes: { air: string | null; line: string | null };
  trims: Record<GaugeId, number>;
  traced: string[];
  judged: Record<string, 'low' | 'high'>;
  sheetsRead: string[];
  replaced: string[];
  /** Sides a path from an open can leads to. */
  canOpenTo: ('low' | 'high')[];
  service: ServiceDesk;
  search: SearchDesk;
  tasks: TaskDesk;
  hazards: HazardDesk;
}

export function emptyHose(): HoseOnDesk {
  return {
    port: null,
    open: false,
    route: [],
    caught: false,
    purging: false,
    endOpen: false,
    dangerSteps: 0,
  };
}

export function emptyCan(): CanOnDesk {
  return { onto: null, turn: 0, tiltDeg: 0, place: 'mat', shakenUntil: 0 };
}
