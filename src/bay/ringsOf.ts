/** Rings round every port and all gear where a thing may go; the one it is over is strong. */
import type { Scene } from './gesture/underPointer';
import type { Ready } from './hands';
import { SCALE } from './itemIds';
import type { Ring } from './scene/ringNode';

const PORT_RING_MM = 46;

export function ringsOf({ layout, gear }: Scene, thing: Ready | null, over: string | null): Ring[] {
  if (!thing) return [];
  const ports = layout.ports.map(({ id, at }) => ({ id, at, r: PORT_RING_MM }));
  return [...ports, ...gear.filter(({ id }) => id !== SCALE)]
    .filter(({ id }) => thing.valid.includes(id))
    .map(({ id, at, r }) => ({ at, r, strong: over === id }));
}
