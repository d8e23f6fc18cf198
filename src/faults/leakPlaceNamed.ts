/** A place of the loop by its id. Throws `RangeError` with what there is. */
import type { Car } from '../loop/car/car';
import { type LeakPlace, leakPlaces } from './leakPlaces';

export function leakPlaceNamed(car: Car, id: string): LeakPlace {
  const places = leakPlaces(car);
  const found = places.find((place) => place.id === id);
  if (found) return found;
  throw new RangeError(`no part "${id}" in the loop; there is ${places.map((place) => place.id).join(', ')}`);
}
