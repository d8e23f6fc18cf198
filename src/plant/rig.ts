/**
 * What a command works on: the car's network, where things lie, what is on the bench, and the desk that remembers what a
 * person has set. Handlers read and change the desk and the network's links through it; they decide no physics.
 */
import type { CanSpec } from '../equipment/cans';
import type { FittingId } from '../equipment/fittings';
import type { HoseId, HoseSpec } from '../equipment/hoses';
import type { OilKind } from '../equipment/oils';
import type { PlaceSpec } from '../equipment/place';
import type { ToolId } from '../equipment/tools';
import type { LeakPlace } from '../faults/leakPlaces';
import type { Layout } from '../layout/layout';
import type { VehicleData } from '../loop/car/vehicles';
import type { Network } from '../loop/network';
import type { Port, VesselIndex } from '../loop/networkTypes';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import type { Outcome, PlantEvent } from './commandSpecs';
import type { Desk } from './desk';
import type { ToolVessels } from './toolVessels';

export interface RigPort {
  readonly id: string;
  /** As the car was built; what is in force is told by `fittingAt`. */
  readonly fitting: FittingId;
  readonly at: Port;
  readonly side: 'low' | 'high';
}

export interface RigHose {
  readonly spec: HoseSpec;
  readonly vessel: VesselIndex;
}

export interface RigCan {
  readonly spec: CanSpec;
  readonly vessel: VesselIndex;
}

export interface Rig {
  readonly network: Network;
  readonly vehicle: VehicleData;
  /** What cans, tank and hoses of the bench are for, and what is in its oil injector. */
  readonly onBench: RefrigerantId;
  readonly benchOil: OilKind;
  /** High and low side. */
  readonly loopVessels: readonly VesselIndex[];
  /** Where the car stands. */
  readonly place: PlaceSpec;
  readonly layout: Layout;
  readonly desk: Desk;
  readonly ports: ReadonlyMap<string, RigPort>;
  readonly hoses: ReadonlyMap<HoseId, RigHose>;
  readonly cans: ReadonlyMap<string, RigCan>;
  /** What else lies on the bench, and the vessels of it. */
  readonly tools: readonly ToolId[];
  readonly toolVessels: ToolVessels;
  /** Sheets that lie in the car or on the bench. */
  readonly sheets: readonly string[];
  /** Causes that can be named: the faults that apply to this car, and `nothing-wrong`. */
  readonly causes: readonly string[];
  /** Places of the loop by id: where it can leak, be searched and be undone. */
  readonly places: ReadonlyMap<string, LeakPlace>;
  /** Parts that can be changed for new. */
  readonly replaceable: readonly string[];
  readonly ambientK: number;
  readonly airPressurePa: number;
  step(): number;
  /** What an instrument shows now in SI; NaN where it shows nothing. */
  reading(channel: string): number;
  /** Whether what it shows is the end of its range. */
  isStopped(channel: string): boolean;
  /** Takes the faults away that a new `part` clears. */
  repair(part: string): void;
  /** Takes the dirt off a part. */
  clean(part: string): void;
  /** Dye with its oil into a vessel of the loop. */
  injectDye(kg: number, vessel: VesselIndex): void;
  /** Oil of a kind into a vessel of the loop, on to its walls or into the compressor; kg that came. */
  addOil(kind: OilKind, kg: number, vessel: VesselIndex, at?: 'walls' | 'sump'): number;
  /** What the compressor's hub does: against its pulley, and how often the clutch came in of late. */
  clutch(): { readonly turning: boolean; readonly slip: number; readonly cyclesPerMin: number };
  /** What glows under the lamp at a place, 0 nothing .. 8. */
  glowAt(place: string): number;
  /** What lies on an instrument has changed: it shows nothing until time has passed. */
  unsettle(channel: string): void;
}

const NOTHING: readonly PlantEvent[] = [];

export function done(...events: PlantEvent[]): Outcome {
  return { ok: true, events: events.length ? events : NOTHING };
}

export function refuse(reason: string, params: Readonly<Record<string, string>> = {}): Outcome {
  return { ok: false, reason: `refusal.${reason}`, params };
}
