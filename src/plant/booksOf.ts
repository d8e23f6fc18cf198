/**
 * Conservation over everything in the plant: the network's own books, with the mass vessel by vessel. A foreign fluid is
 * refrigerant too.
 */
import type { PlantParts } from './assemblePlant';
import type { Books } from './plantPort';
import { ventedKg } from './ventedKg';

export function booksOf({ car }: PlantParts): Books {
  const { network } = car;
  const books = network.books();
  const byVessel: Record<string, number> = {};
  for (const { slot, spec } of network.structure().vessels) byVessel[spec.id] = network.chargeKg(slot);
  return {
    refrigerantKg: books.heldKg.refrigerant + books.heldKg.foreign,
    massErrorRelative: books.massErrorRelative,
    energyErrorRelative: books.energyErrorRelative,
    massByVesselKg: byVessel,
    ventedKg: ventedKg(network),
  };
}
