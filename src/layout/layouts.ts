/**
 * The layouts that ship, by vehicle id. A page fetches the one it shows; the command line and the tests hold them all
 * (allLayouts.ts). A layout whose graph does not hold (a line to a part that isn't there, a port off its line) is refused
 * as it comes, with every finding in one message.
 */
import { layoutFindings } from './findings';
import type { Layout } from './layout';

const FOLDER = '../../shared/vehicles/';
const ENDING = '.layout.yaml';
const files = import.meta.glob<Layout>('../../shared/vehicles/*.layout.yaml', { import: 'default' });

const byId = new Map<string, Layout>();

export const layoutIds: readonly string[] = Object.keys(files)
  .map((path) => path.slice(FOLDER.length, -ENDING.length))
  .sort();

/** Fetches one layout; after it `layoutOf(id)` answers. An id that no vehicle has is left to whoever asks for it. */
export async function loadLayout(vehicleId: string): Promise<void> {
  const fetched = byId.has(vehicleId) ? undefined : await files[`${FOLDER}${vehicleId}${ENDING}`]?.();
  if (fetched) keepLayout(fetched);
}

export function keepLayout(layout: Layout): void {
  const findings = layoutFindings(layout);
  if (findings.length > 0) throw new RangeError(`${layout.id}${ENDING}: ${findings.join('; ')}`);
  byId.set(layout.id, layout);
}

/** The layout of a vehicle. Throws `RangeError` for an id that has none, or whose layout has not been loaded. */
export function layoutOf(vehicleId: string): Layout {
  const layout = byId.get(vehicleId);
  if (!layout) throw new RangeError(`no layout "${vehicleId}"; there is ${layoutIds.join(', ')}`);
  return layout;
}
