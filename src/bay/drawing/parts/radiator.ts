/** Radiator top tank with its pressure cap. */
import type { Part } from '../../../layout/layout';
import { dome, down } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, repeat, shape } from '../record';
import { canister, slab } from '../solids';
import { sizeOf } from './partSize';

export function radiator(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const d = sizeOf(part, 'd');
  const cap = x + w * sizeOf(part, 'capShare');
  const level = y + d / 2 - 8;
  return [
    ...slab(x, y, w, d, { r: 10, lip: 10, m: 'plas', elevation: 26 }),
    shape(roundRect(x + 12, y + 9, w - 24, d - 20, 6), down('plas'), 'plas-d', 1.4),
    ...repeat(w / 60, (i) => bar(x + 36 + i * 60, y + 4, x + 36 + i * 60, y + d - 3, 'plas-d', 2, 0.7)),
    ...canister(cap, level, 27, 12, 'cast'),
    shape(roundRect(cap - 36, level - 7, 72, 14, 7), down('cast'), 'cast-d', 1.6),
    shape(circle(cap, level, 9), dome('cast'), 'cast-d', 1.3),
  ];
}
