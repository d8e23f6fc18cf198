/**
 * The drawings of one bay's parts, fetched once and kept: those of a vehicle's layout, or those of the drill. They are
 * read from assets/parts when the project is built.
 */
import { type PackedBundle, unpacked } from './packed';
import type { PartFile } from './partFile';

const cars = import.meta.glob<PackedBundle>('../../../../shared/vehicles/*.layout.yaml', {
  query: '?parts',
  import: 'default',
});
const drill = (): Promise<{ readonly default: unknown }> =>
  import('../../../../assets/parts/drill.yaml?parts');

const book = new Map<string, PartFile>();
const fetched = new Map<string, Promise<void>>();

/** Fetches what a vehicle's parts wear; for `drill`, what any of its bays may. Throws `RangeError` for an unknown id. */
export function loadParts(vehicleId: string): Promise<void> {
  const known = fetched.get(vehicleId);
  if (known) return known;
  const fetching = vehicleId === 'drill' ? loadDrill() : loadCar(vehicleId);
  fetched.set(vehicleId, fetching);
  fetching.catch(() => fetched.delete(vehicleId));
  return fetching;
}

async function loadDrill(): Promise<void> {
  keep((await drill()).default as PackedBundle);
}

async function loadCar(vehicleId: string): Promise<void> {
  const load = cars[`../../../../shared/vehicles/${vehicleId}.layout.yaml`];
  if (!load) throw new RangeError(`no drawings for "${vehicleId}"`);
  keep(await load());
}

/** A drawing by its name. Throws `RangeError` for one that was not fetched. */
export function partFile(name: string): PartFile {
  const found = book.get(name);
  if (!found) throw new RangeError(`nobody can draw a "${name}"; there is ${[...book.keys()].join(', ')}`);
  return found;
}

function keep(bundle: PackedBundle): void {
  for (const [name, part] of unpacked(bundle)) book.set(name, part);
}
