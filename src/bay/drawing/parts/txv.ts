/** Expansion valve at the firewall: a milled block with its plated power head and two line seats. */
import type { Part } from '../../../layout/layout';
import { circle } from '../paths';
import { type Drawing, fill } from '../record';
import { bolt, canister, slab } from '../solids';

export function txv(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    ...slab(x - 64, y, 128, 44, { r: 9, lip: 22, m: 'mill', elevation: 28 }),
    ...canister(x, y + 20, 19, 8, 'zinc', { elevation: 8 }),
    ...bolt(x - 50, y + 13, 6),
    ...bolt(x + 50, y + 13, 6),
    fill(circle(x - 32, y + 56, 11), 'iron-d'),
    fill(circle(x + 32, y + 56, 15), 'iron-d'),
  ];
}
