/** What of the loop is another gas than the bench's, kg; a loop with next to none of the bench's own still holds another. */
import type { PlantParts } from './assemblePlant';

export function loopForeignKg({ car: { network, loop } }: Pick<PlantParts, 'car'>): number {
  return network.massKg(loop.low, 'foreign') + network.massKg(loop.high, 'foreign');
}
