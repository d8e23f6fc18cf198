/** The hidden faults of one car: which there are, since when, and what a new part has cleared. */
import type { Car } from '../loop/car/car';
import type { VehicleData } from '../loop/car/vehicles';
import type { HiddenFault } from './buildPlant';

export interface FaultBook {
  /** Causes that may be named for this car. */
  readonly causes: readonly string[];
  /** Parts that can be changed for new on this car. */
  readonly replaceable: readonly string[];
  startingChargeKg(chargeKg: number): number;
  /** Brings the car's health to what the faults that have begun and are not mended leave of it. */
  settle(car: Car, step: number): void;
  repair(part: string): void;
  /** For snapshots. */
  mended(): readonly string[];
  restore(mended: readonly string[]): void;
}

export function openFaultBook(_vehicle: VehicleData, hidden: readonly HiddenFault[]): FaultBook {
  if (hidden.length > 0) throw new RangeError(`no fault "${hidden[0].id}"`);
  return {
    causes: ['nothing-wrong'],
    replaceable: [],
    startingChargeKg: (chargeKg) => chargeKg,
    settle() {},
    repair() {},
    mended: () => [],
    restore() {},
  };
}
