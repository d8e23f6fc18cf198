/** Conservation over everything in the plant: the network's own books, with the mass vessel by vessel. */
import type { PlantParts } from './assemblePlant';
import type { Books } from './plantPort';

export function booksOf({ car }: PlantParts): Books {
  const { network } = car;
  const books = network.books();
  const byVessel: Record<string, number> = {};
  for (const { slot, spec } of network.structure().vessels)
    byVessel[spec.id] = network.massKg(slot, 'refrigerant');
  return {
    refrigerantKg: books.heldKg.refrigerant,
    massErrorRelative: books.massErrorRelative,
    energyErrorRelative: books.energyErrorRelative,
    massByVesselKg: byVessel,
    ventedKg: books.ventedKg.refrigerant,
  };
}
