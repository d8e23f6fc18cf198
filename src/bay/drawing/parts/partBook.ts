/**
 * The drawings of one bay's parts, fetched once and kept: those of a vehicle's layout, or those of the drill. They are
 * read from assets/parts when the project is built; here they only get their gradients back.
 */
import type { Gradient } from '../paints';
import type { DrawRecord } from '../record';
import type { PartFile, Piece } from './partFile';

interface Bundle {
  readonly gradients: readonly Gradient[];
  /** As in a part file, but with the number of a gradient where one fills. */
  readonly drawings: Readonly<Record<string, PartFile>>;
}

const cars = import.meta.glob<Bundle>('../../../../shared/vehicles/*.layout.yaml', {
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
  open((await drill()).default as Bundle);
}

async function loadCar(vehicleId: string): Promise<void> {
  const load = cars[`../../../../shared/vehicles/${vehicleId}.layout.yaml`];
  if (!load) throw new RangeError(`no drawings for "${vehicleId}"`);
  open(await load());
}

/** A drawing by its name. Throws `RangeError` for one that was not fetched. */
export function partFile(name: string): PartFile {
  const found = book.get(name);
  if (!found) throw new RangeError(`nobody can draw a "${name}"; there is ${[...book.keys()].join(', ')}`);
  return found;
}

function open({ gradients, drawings }: Bundle): void {
  const filled = (record: DrawRecord): DrawRecord =>
    'fill' in record && typeof record.fill === 'number'
      ? { ...record, fill: gradients[record.fill] as Gradient }
      : record;
  const whole = (piece: Piece): Piece =>
    'holds' in piece ? { ...piece, holds: piece.holds.map(filled) } : filled(piece);
  for (const [name, { meta, groups }] of Object.entries(drawings)) {
    const opened = Object.entries(groups).map(([id, pieces]) => [id, pieces.map(whole)] as const);
    book.set(name, { meta, groups: Object.fromEntries(opened) });
  }
}
