/** Reservoirs of pale plastic: coolant tank with its level, washer bottle. */
import type { Part } from '../../../layout/layout';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, ROUND, stroke } from '../record';
import { canister, slab } from '../solids';
import { sizeOf } from './partSize';

const COOLANT_LEVEL = 0.6;

export function tank(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const capX = x + w * sizeOf(part, 'capX', 0.5);
  const capY = y + h * sizeOf(part, 'capY', 0.3);
  return [
    ...slab(x, y, w, h, { r: 22, lip: 26, m: 'resv', elevation: 38 }),
    fill(roundRect(x + 8, y + h * (1 - COOLANT_LEVEL), w - 16, h * COOLANT_LEVEL - 6, 16), 'resv-c', 0.5),
    bar(x + 12, y + h * 0.62, x + w * 0.5, y + h * 0.62, 'resv-d', 2, 0.55),
    bar(x + 12, y + h * 0.82, x + w * 0.5, y + h * 0.82, 'resv-d', 2, 0.55),
    ...canister(capX, capY, 25, 14, 'plas'),
    stroke(circle(capX, capY, 15), 'plas-h', 2, 0.6),
  ];
}

export function washer(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const cx = mm(x + w * 0.5);
  return [
    ...slab(x, y, w, h, { r: 20, lip: 24, m: 'resv', elevation: 30 }),
    fill(roundRect(x + 10, y + h * 0.45, w - 20, h * 0.5, 14), 'washer', 0.28),
    ...canister(cx, y + 44, 30, 12, 'plas'),
    stroke(
      `M${cx - 15} ${y + 50}q15 -22 30 0M${cx} ${y + 50}v-14M${cx - 9} ${y + 45}l-4 -6M${cx + 9} ${y + 45}l4 -6`,
      'plas-h',
      2.6,
      0.9,
      ROUND,
    ),
  ];
}
