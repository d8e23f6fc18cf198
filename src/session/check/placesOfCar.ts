/** Where a car that ships can leak; worked out once for each. */
import { purely } from '../../faults/fault';
import { type LeakPlace, leakPlaces } from '../../faults/leakPlaces';
import { createCar } from '../../loop/car/createCar';
import { vehicleOf } from '../../loop/car/vehicles';

const known = new Map<string, readonly LeakPlace[]>();

export function placesOfCar(id: string): readonly LeakPlace[] {
  const places = known.get(id) ?? placesOf(id);
  known.set(id, places);
  return places;
}

function placesOf(id: string): readonly LeakPlace[] {
  const vehicle = vehicleOf(id);
  const { refrigerant, charge } = vehicle.label;
  const rest = { ambientK: 293.15, relativeHumidity: 0.5, stood: 'equalised' } as const;
  return leakPlaces(createCar(vehicle, { ...purely(refrigerant, charge), ...rest }));
}
