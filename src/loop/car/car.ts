/**
 * A car's refrigerant loop with its air, controls and cabin, stepped at 20 ms. Everything that changes stands in
 * `network.state`, so the network's snapshot is the car's.
 */
import type { RefrigerantId } from '../../refrigerant/refrigerant';
import type { ForeignId } from '../foreign';
import type { Network } from '../network';
import type { Port } from '../networkTypes';
import type { CarLoop } from './assembleLoop';
import type { CarNumber, EditName } from './carNumbers';
import type { VehicleData } from './vehicles';

/** How the car stands before time begins. */
export interface CarStart {
  readonly refrigerant: RefrigerantId;
  /** In the whole loop, what the oil holds included. */
  readonly chargeKg: number;
  readonly airKg?: number;
  /** A second refrigerant, by its share of the charge; water; and what is over (negative: short of) the oil that belongs in it. */
  readonly foreign?: { readonly fluid: ForeignId; readonly share: number };
  readonly waterKg?: number;
  readonly extraOilKg?: number;
  readonly ambientK: number;
  readonly relativeHumidity: number;
  readonly ambientPressurePa?: number;
  /** `equalised`: stood for hours out of the sun. `soaked`: driven hot, then stood in the sun with everything shut. */
  readonly stood: 'equalised' | 'soaked';
}

/** What a person sets. */
export interface CarSettings {
  readonly engineRevPerS: number;
  readonly airConditioningOn: boolean;
  /** 0 off .. highest. */
  readonly blowerStep: number;
  /** Of the rear unit, where there is one. */
  readonly rearBlowerStep: number;
  readonly windowsOpen: boolean;
  readonly recirculated: boolean;
  /** Share of the vents' air that the temperature control sends past the heater. */
  readonly heaterShare: number;
  readonly roadSpeedMPerS: number;
  readonly sunW: number;
  readonly occupants: number;
  /** Water sprayed on the condenser, kg/s. */
  readonly sprayKgPerS: number;
  /** Whether the compressor's line has a high-pressure cut-out; what the car was built with where nothing is said. */
  readonly highCutOut: boolean;
  /** A wire across a pressure switch: it opens and nothing lets go. */
  readonly lowBridged: boolean;
  readonly highBridged: boolean;
  /** The cooling system calls for the electric fans, whether the key is on or not. */
  readonly fanCalled: boolean;
}

export interface Car {
  readonly vehicle: VehicleData;
  readonly network: Network;
  readonly loop: CarLoop;
  set(settings: Partial<CarSettings>): void;
  setWeather(ambientK: number, relativeHumidity: number, ambientPressurePa?: number): void;
  /** What faults make of one of the numbers they may edit (`EDITS`). */
  edit(name: EditName, value: number): void;
  /** A part of the bay changed for new: its damage is gone. Parts without damage of their own do not mind. */
  renew(part: string): void;
  /** Any number of the car's that is not in its vessels. */
  number(name: CarNumber): number;
  /** Vessel and cell behind a service port. Throws `RangeError` on an unknown id. */
  port(id: string): Port;
  readonly portIds: readonly string[];
  step(dtS: number): void;
}
