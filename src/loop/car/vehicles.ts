/**
 * The cars that ship, by id, in SI numbers; checked and converted when the project is built. Outside a browser all of them
 * are there at once; a page fetches the one it plays with.
 */
import type { VehicleData } from '../../../shared/schema/vehicle';

const FOLDER = '../../../shared/vehicles/';
const files = import.meta.glob<VehicleData>(
  ['../../../shared/vehicles/*.yaml', '!../../../shared/vehicles/*.layout.yaml'],
  { import: 'default' },
);

const byId = new Map(Object.values(outsideThePage()).map((vehicle) => [vehicle.id, vehicle]));

export const vehicleIds: readonly string[] = Object.keys(files)
  .map((path) => path.slice(FOLDER.length, -'.yaml'.length))
  .sort();

function outsideThePage(): Readonly<Record<string, VehicleData>> {
  if (!import.meta.env.SSR) return {};
  return import.meta.glob<VehicleData>(
    ['../../../shared/vehicles/*.yaml', '!../../../shared/vehicles/*.layout.yaml'],
    { eager: true, import: 'default' },
  );
}

/** After it `vehicleOf(id)` answers. An id that no car has is left to whoever asks for it. */
export async function loadVehicle(id: string): Promise<void> {
  const fetched = byId.has(id) ? undefined : await files[`${FOLDER}${id}.yaml`]?.();
  if (fetched) byId.set(id, fetched);
}

/** Throws `RangeError` for an id that no car has, or whose car has not been loaded. */
export function vehicleOf(id: string): VehicleData {
  const vehicle = byId.get(id);
  if (!vehicle) throw new RangeError(`no vehicle "${id}"; there is ${vehicleIds.join(', ')}`);
  return vehicle;
}

export type { ComponentData, VehicleData } from '../../../shared/schema/vehicle';
