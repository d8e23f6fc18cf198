/** Brake booster at the firewall with its master cylinder and reservoir. */
import type { Part } from '../../../layout/layout';
import { across } from '../paints';
import { ellipse } from '../paths';
import { bar, type Drawing, fill, mm, repeat, shape, stroke } from '../record';
import { canister, drum, K, slab } from '../solids';
import { sizeOf } from './partSize';

export function booster(part: Part): Drawing {
  const [x, y] = part.at;
  const r = sizeOf(part, 'r');
  const wall = `M${x - r} ${y + 26}V${y - 28}A${r} ${mm(r * K)} 0 0 1 ${x + r} ${y - 28}V${y + 26}A${r} ${mm(r * K)} 0 0 1 ${x - r} ${y + 26}Z`;
  return [
    ...drum(x, y + 26, r, 54, 'rub', { elevation: 34 }),
    fill(wall, across('iron'), 0.55),
    stroke(ellipse(x, y + 26, r * 0.86, r * 0.86 * K), 'iron-h', 2.2, 0.5),
    shape(ellipse(x, y + 26, r * 0.5, r * 0.5 * K), 'iron-b', 'iron-d', 2),
    ...slab(x - 27, y + 34, 54, 118, { r: 16, lip: 12, m: 'cast', top: across('cast'), elevation: 30 }),
    ...slab(x - 40, y + 44, 80, 88, { r: 14, lip: 16, m: 'resv', elevation: 20 }),
    ...canister(x, y + 86, 30, 10, 'plas'),
    ...repeat(12, (i) => {
      const angle = i * 0.5236;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      return bar(x + c * 23, y + 86 + s * 23, x + c * 29, y + 86 + s * 29, 'plas-d', 2.4, 0.8);
    }),
  ];
}
