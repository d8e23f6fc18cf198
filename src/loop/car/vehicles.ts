/**
 * The cars that ship, by id, in SI numbers; checked and converted when the project is built. A page fetches
 * the one it plays with; the command line and the tests hold them all (allVehicles.ts).
 */
import type { VehicleData } from '../../../shared/schema/vehicle';

const FOLDER = '../../../shared/vehicles/';
const files = import.meta.glob<VehicleData>(
  ['../../../shared/vehicles/*.yaml', '!../../../shared/vehicles/*.layout.yaml'],
  { import: 'default' },
);

const byId = new Map<string, VehicleData>();

export const vehicleIds: readonly string[] = Object.keys(files)
  .map((path) => path.slice(FOLDER.length, -'.yaml'.length))
  .sort();

/** Fetches one car; after it `vehicleOf(id)` answers. An id that no car has is left to whoever asks for it. */
export async function loadVehicle(id: string): Promise<void> {
  const fetched = byId.has(id) ? undefined : await files[`${FOLDER}${id}.yaml`]?.();
  if (fetched) keepVehicle(fetched);
}

export function keepVehicle(vehicle: VehicleData): void {
  byId.set(vehicle.id, vehicle);
}

/** Throws `RangeError` for an id that no car has, or whose car has not been loaded. */
export function vehicleOf(id: string): VehicleData {
  const vehicle = byId.get(id);
  if (!vehicle) throw new RangeError(`no vehicle "${id}"; there is ${vehicleIds.join(', ')}`);
  return vehicle;
}

export type { ComponentData, VehicleData } from '../../../shared/schema/vehicle';
