/** Small engine-bay things: dipstick, oil filter, starter, alternator. */
import type { Part } from '../../../layout/layout';
import { move } from '../matrix';
import { across, dome, down } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, ROUND, repeat, shape, stroke } from '../record';
import { bolt, canister, slab } from '../solids';
import { tube } from '../tubes';

export function dipstick(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    { ...stroke(`M${x} ${y}l34 26`, 'shadow', 7, 0.4), matrix: move(10, 10) },
    ...tube(`M${x} ${y}l40 34`, 7, 'zinc'),
    stroke(circle(x - 9, y - 8, 12), 'chg-d', 8),
    stroke(circle(x - 9, y - 8, 12), 'chg', 5),
    stroke(`M${x - 20} ${y - 10}a12 12 0 0 1 9 -10`, 'chg-a', 2.4, 1, ROUND),
  ];
}

export function oilfilter(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    ...canister(x, y, 36, 34, 'plas', { elevation: 26 }),
    ...repeat(10, (i) => {
      const [c, s] = [Math.cos(i * 0.628), Math.sin(i * 0.628)];
      return bar(x + c * 26, y + s * 26, x + c * 34, y + s * 34, 'plas-d', 2.4, 0.8);
    }),
    shape(circle(x, y, 14), dome('iron'), 'plas-d', 1.6),
  ];
}

export function starter(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    ...slab(x, y, 150, 58, { r: 24, lip: 14, m: 'iron', top: down('iron'), elevation: 22 }),
    ...slab(x + 26, y - 20, 86, 30, { r: 13, lip: 8, m: 'iron', top: down('iron'), elevation: 12 }),
    ...bolt(x + 96, y - 6, 6),
  ];
}

export function alternator(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    ...slab(x - 56, y - 104, 112, 90, { r: 26, lip: 18, m: 'cast', top: across('cast'), elevation: 34 }),
    ...repeat(6, (i) => fill(roundRect(x - 42 + i * 15, y - 96, 7, 44, 3.5), 'cast-d')),
    shape(roundRect(x - 58, y - 44, 116, 16, 6), down('cast'), 'cast-d', 1.6),
  ];
}
