/** Faults of a bulb need one that sits on a tube of its own: in a block valve the sensing element is inside the body. */
import type { VehicleData } from '../loop/car/vehicles';

export function hasRemoteBulb({ metering }: VehicleData): boolean {
  return metering.kind === 'expansion-valve' && metering.sensing === 'bulb';
}
