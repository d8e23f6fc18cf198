/** Whether a person may lay hands on a car's loop at all: high voltage and flammable refrigerant ask for a training. */
import type { Person } from '../../../shared/schema/persons';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';

/** An unknown vehicle is somebody else's finding. */
export function isTrained(person: Person, vehicleId: string): boolean {
  if (!vehicleIds.includes(vehicleId)) return true;
  const { compressor, label } = vehicleOf(vehicleId);
  if (compressor.kind === 'electric') return person === 'high-voltage-trained';
  return person !== 'owner' || label.refrigerant !== 'R-1234yf';
}
