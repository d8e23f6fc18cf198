/** Upright nose of a pickup: slotted grille strip, square lamps beside it, a bright bumper across the whole width. */
import type { Shell } from '../../../layout/layout';
import { down } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape, stroke } from '../record';
import { slab } from '../solids';
import { PAST } from './body';

const SLOT_MM = 34;

export function noseUpright({ left, right, grille, bumper }: Shell): Drawing {
  const w = right - left;
  const width = left + right;
  return [
    ...slab(left + 120, grille, w - 240, 26, { r: 8, lip: 6, m: 'plas', elevation: 14 }),
    ...repeat((w - 280) / SLOT_MM, (i) =>
      fill(roundRect(left + 138 + i * SLOT_MM, grille + 6, 20, 15, 4), 'plas-d'),
    ),
    ...lamp(left - 20, grille),
    ...lamp(right - 130, grille),
    fill(`M${-PAST} ${bumper}H${width + PAST}V${bumper + PAST}H${-PAST}Z`, down('mill')),
    stroke(`M${-PAST} ${bumper}H${width + PAST}`, 'mill-h', 3),
    stroke(`M${-PAST} ${bumper - 3}H${width + PAST}`, 'mill-d', 2.4),
  ];
}

const lamp = (x: number, y: number): Drawing => [
  ...slab(x, y - 16, 150, 50, { r: 12, lip: 8, m: 'plas', elevation: 14 }),
  { ...shape(roundRect(x + 12, y - 7, 126, 34, 9), down('mill'), 'mill-d', 2), fillAlpha: 0.85 },
  bar(x + 24, y + 3, x + 84, y + 3, 'mill-h', 4, 0.8),
];
