/** The cars that ship, by id, in SI numbers; checked and converted when the project is built. */
import type { VehicleData } from '../../../shared/schema/vehicle';

const files = import.meta.glob<VehicleData>(
  ['../../../shared/vehicles/*.yaml', '!../../../shared/vehicles/*.layout.yaml'],
  {
    eager: true,
    import: 'default',
  },
);

const byId = new Map(Object.values(files).map((vehicle) => [vehicle.id, vehicle]));

export const vehicleIds: readonly string[] = [...byId.keys()].sort();

/** Throws `RangeError` for an id that no car has. */
export function vehicleOf(id: string): VehicleData {
  const vehicle = byId.get(id);
  if (!vehicle) throw new RangeError(`no vehicle "${id}"; there is ${vehicleIds.join(', ')}`);
  return vehicle;
}

export type { ComponentData, VehicleData } from '../../../shared/schema/vehicle';
