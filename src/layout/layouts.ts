/**
 * The layouts that ship, by vehicle id. They are read once when the module loads; a layout whose graph does not hold
 * (a line to a part that isn't there, a port off its line) is refused then, with every finding in one message.
 */
import { layoutFindings } from './findings';
import type { Layout } from './layout';

const files = import.meta.glob<Layout>('../../shared/vehicles/*.layout.yaml', {
  eager: true,
  import: 'default',
});

const byId = new Map<string, Layout>();
for (const [path, layout] of Object.entries(files)) {
  const findings = layoutFindings(layout);
  if (findings.length > 0) {
    throw new RangeError(`${path.slice(path.lastIndexOf('/') + 1)}: ${findings.join('; ')}`);
  }
  byId.set(layout.id, layout);
}

export const layoutIds: readonly string[] = [...byId.keys()].sort();

/** The layout of a vehicle. Throws `RangeError` for an id that has none. */
export function layoutOf(vehicleId: string): Layout {
  const layout = byId.get(vehicleId);
  if (!layout) throw new RangeError(`no layout "${vehicleId}"; there is ${layoutIds.join(', ')}`);
  return layout;
}
