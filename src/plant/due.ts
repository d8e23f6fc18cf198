/** What belongs in a car: by its label, or by its conversion once it wears the fittings of one. */

import { type OilKind, oilKindOf } from '../equipment/oils';
import type { VehicleData } from '../loop/car/vehicles';
import type { RefrigerantId } from '../refrigerant/refrigerant';
import type { Desk } from './desk';

export interface Due {
  readonly refrigerant: RefrigerantId;
  readonly chargeKg: number;
  readonly toleranceKg: number;
  readonly oil: OilKind;
  readonly oilM3: number;
}

/** For a car filled with `refrigerant`: the conversion's figures where it is converted to that one, else the label's. */
export function dueWith({ label, conversion }: VehicleData, refrigerant: RefrigerantId): Due {
  const by = conversion?.refrigerant === refrigerant ? conversion : label;
  return {
    refrigerant: by.refrigerant,
    chargeKg: by.charge,
    toleranceKg: by.tolerance,
    oil: oilKindOf(by.oil),
    oilM3: by.oilAmount,
  };
}

/** For the car as it stands. */
export function dueNow(vehicle: VehicleData, { refitted }: Pick<Desk, 'refitted'>): Due {
  const { label, conversion } = vehicle;
  const converted = conversion !== undefined && refitted.length > 0;
  return dueWith(vehicle, converted ? conversion.refrigerant : label.refrigerant);
}
