/** What can be changed for new: parts that carry a fault, and every place of the loop; a joint gets a new seal. */
import type { PlantParts } from './assemblePlant';

export function replaceable({ faults, places }: Pick<PlantParts, 'faults' | 'places'>): readonly string[] {
  return [...new Set([...faults.replaceable, ...places.map(({ id }) => id)])];
}
