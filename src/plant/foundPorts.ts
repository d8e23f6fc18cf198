/**
 * Caps and covers of the ports as the car was found. A cap is the primary seal: where it is gone, a core that leaks does so
 * from the start. A letter on a cap is only a letter.
 */
import type { PlantParts } from './assemblePlant';

const LETTER = { low: 'L', high: 'H' } as const;

export function foundPorts({ options, layout, desk, ports }: PlantParts): void {
  const { caps = [], covers = [] } = options.found ?? {};
  for (const { port, is } of caps) {
    const side = ports.get(port)?.side;
    if (!side) throw new RangeError(`no port "${port}" for a cap; there is ${[...ports.keys()].join(', ')}`);
    if (is === 'missing') desk.caps[port] = false;
    else desk.capLetters[port] = LETTER[is === 'own' ? side : side === 'low' ? 'high' : 'low'];
  }
  for (const { id, cover } of layout.ports) if (cover) desk.covers[id] = true;
  for (const { port, is } of covers) {
    if (!(port in desk.covers)) throw new RangeError(`port "${port}" lies under no cover`);
    desk.covers[port] = is === 'on';
  }
}
