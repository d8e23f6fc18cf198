/** A core that leaks is stopped by its cap, or by a coupler: its way out is open with neither. */
import type { PlantParts } from './assemblePlant';
import { isSealed } from './gasFlow';

export function heedCaps(parts: PlantParts): void {
  const { network } = parts.car;
  for (const port of parts.ports.keys()) {
    const link = network.linkNamed(`leak:${port}`);
    if (link >= 0) network.setOpening(link, isSealed(parts, port) ? 0 : 1);
  }
}
