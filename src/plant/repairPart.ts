/** A new part goes in: what it clears is gone from the next step on. */
import type { PlantParts } from './assemblePlant';

export function repairPart({ faults }: PlantParts, part: string): void {
  faults.repair(part);
}
