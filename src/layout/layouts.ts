/**
 * The layouts that ship, by vehicle id. Outside a browser all of them are there at once; a page fetches the one it shows.
 * A layout whose graph does not hold (a line to a part that isn't there, a port off its line) is refused as it comes,
 * with every finding in one message.
 */
import { layoutFindings } from './findings';
import type { Layout } from './layout';

const FOLDER = '../../shared/vehicles/';
const ENDING = '.layout.yaml';
const files = import.meta.glob<Layout>('../../shared/vehicles/*.layout.yaml', { import: 'default' });

const byId = new Map<string, Layout>();
for (const layout of Object.values(outsideThePage())) keep(layout);

export const layoutIds: readonly string[] = Object.keys(files)
  .map((path) => path.slice(FOLDER.length, -ENDING.length))
  .sort();

function outsideThePage(): Readonly<Record<string, Layout>> {
  if (!import.meta.env.SSR) return {};
  return import.meta.glob<Layout>('../../shared/vehicles/*.layout.yaml', { eager: true, import: 'default' });
}

function keep(layout: Layout): void {
  const findings = layoutFindings(layout);
  if (findings.length > 0) throw new RangeError(`${layout.id}${ENDING}: ${findings.join('; ')}`);
  byId.set(layout.id, layout);
}

/** After it `layoutOf(id)` answers. An id that no vehicle has is left to whoever asks for it. */
export async function loadLayout(vehicleId: string): Promise<void> {
  const fetched = byId.has(vehicleId) ? undefined : await files[`${FOLDER}${vehicleId}${ENDING}`]?.();
  if (fetched) keep(fetched);
}

/** The layout of a vehicle. Throws `RangeError` for an id that has none, or whose layout has not been loaded. */
export function layoutOf(vehicleId: string): Layout {
  const layout = byId.get(vehicleId);
  if (!layout) throw new RangeError(`no layout "${vehicleId}"; there is ${layoutIds.join(', ')}`);
  return layout;
}
