/** Faults: the quantity each one changes, over what range of severity, on which cars, and what clears it. */
import { faults } from '../../faults/registry';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { isWordId, say } from '../../words/words';

export const listFaults = () =>
  faults.map(({ id, quantity, usualSite, clearedBy, excludes, applies }) => ({
    id,
    title: spoken(`faults.${id}.title`, id),
    quantity: spoken(`faults.quantity.${quantity.name}`, quantity.name),
    unit: quantity.unit,
    atSeverity0: quantity.at(0),
    atSeverity1: quantity.at(1),
    vehicles: vehicleIds.filter((vehicle) => applies(vehicleOf(vehicle))),
    usualSite: usualSite ?? null,
    clearedBy,
    excludes,
  }));

const spoken = (word: string, otherwise: string): string =>
  isWordId(word) ? say({ id: word } as { id: typeof word }) : otherwise;
