/** Name of a vehicle for a reader; its id where it has none. */
import { isWordId, say } from '../../words/words';

export function nameOfVehicle(id: string): string {
  const word = `name.vehicle.${id}`;
  return isWordId(word) ? say({ id: word } as { id: typeof word }) : id;
}
