/** What a car has that a scenario or a plan may name: parts, places that leak or are undone, zones and ways of a hose. */

import { purely } from '../../faults/fault';
import { leakPlaces } from '../../faults/leakPlaces';
import { faults } from '../../faults/registry';
import { layoutOf } from '../../layout/layouts';
import { createCar } from '../../loop/car/createCar';
import { type VehicleData, vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import { isWordId, say } from '../../words/words';
import { fullPlant } from './fullPlant';

function nameOf(id: string): string | null {
  const word = `name.part.${id}`;
  return isWordId(word) ? say({ id: word } as { id: typeof word }) : null;
}

export const listParts = () =>
  vehicleIds.flatMap((vehicle) => {
    const plant = fullPlant(vehicle);
    const sets = (['part', 'replaceable', 'cleanable'] as const).map((set) => plant.choices(set));
    const [looked, replaceable, cleanable] = sets;
    const { parts } = layoutOf(vehicle);
    return [...new Set(sets.flat())].map((id) => ({
      vehicle,
      id,
      name: nameOf(id),
      kind: parts.find((part) => part.id === id)?.kind ?? null,
      look: looked.includes(id),
      replace: replaceable.includes(id),
      clean: cleanable.includes(id),
    }));
  });

/** Places a fault's `site` may name, with the faults that can be there. */
export const listPlaces = () =>
  vehicleIds.flatMap((vehicle) => {
    const car = vehicleOf(vehicle);
    const sited = faults.filter(({ usualSite, applies }) => usualSite !== undefined && applies(car));
    return leakPlaces(standing(car)).map((place) => ({
      vehicle,
      id: place.id,
      kind: place.kind,
      hidden: place.isHidden,
      faults: sited.filter(({ canBeAt = () => true }) => canBeAt(place)).map(({ id }) => id),
    }));
  });

function standing(car: VehicleData) {
  const { refrigerant, charge } = car.label;
  const rest = { ambientK: 293.15, relativeHumidity: 0.5, stood: 'equalised' } as const;
  return createCar(car, { ...purely(refrigerant, charge), ...rest });
}

export const listZones = () =>
  vehicleIds.flatMap((vehicle) =>
    layoutOf(vehicle).zones.map(({ id, hazard, part }) => ({
      vehicle,
      id,
      hazard: hazard ?? null,
      part: part ?? null,
    })),
  );

/** Ways to lead a hose from a port, as `couple` and `route` take them. */
export const listRoutes = () =>
  vehicleIds.flatMap((vehicle) =>
    layoutOf(vehicle).routes.map(({ id, port, through }) => ({
      vehicle,
      id,
      port,
      route: through.join(','),
    })),
  );
