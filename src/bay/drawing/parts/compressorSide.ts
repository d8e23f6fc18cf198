/**
 * Compressor whose shaft lies across the car: the clutch is seen edge-on at its left end. Body and pulley are still;
 * the hub plate is drawn apart: 13 mm off the pulley and black between them while the clutch is open, flush when it
 * is engaged.
 */
import type { Part } from '../../../layout/layout';
import { down } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape } from '../record';
import { bolt, slab } from '../solids';

export function compressorSide(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    ...slab(x + 46, y - 54, 44, 108, { r: 8, lip: 10, m: 'cast' }),
    ...slab(x + 72, y - 58, 150, 116, { r: 22, lip: 16, m: 'mill', top: down('mill'), elevation: 34 }),
    ...repeat(4, (i) => [
      bar(x + 104 + i * 26, y - 56, x + 104 + i * 26, y + 58, 'mill-c', 3, 0.7),
      bar(x + 107 + i * 26, y - 56, x + 107 + i * 26, y + 58, 'mill-h', 1.5, 0.5),
    ]),
    ...slab(x + 214, y - 50, 34, 100, { r: 10, lip: 12, m: 'cast' }),
    ...bolt(x + 231, y - 36, 6),
    ...bolt(x + 231, y + 36, 6),
    ...slab(x + 1, y - 70, 8, 140, { r: 3, lip: 4, m: 'mill', top: down('mill'), elevation: 16 }),
    ...slab(x + 38, y - 70, 8, 140, { r: 3, lip: 4, m: 'mill', top: down('mill'), elevation: 8 }),
    shape(roundRect(x + 8, y - 68, 30, 140, 2), down('rub'), 'rub-d', 1.8),
    ...repeat(3, (i) => bar(x + 16 + i * 7, y - 54, x + 16 + i * 7, y - 6, 'rub-h', 1.7, 0.95)),
  ];
}

const OPEN_GAP_MM = 13;

/** The hub plate, edge-on. `phase` 0 or 1 moves the glints of a turning plate. */
export function hubSide(part: Part, engaged: boolean, phase = 0): Drawing {
  const [x, y] = part.at;
  const gap = engaged ? 1 : OPEN_GAP_MM;
  const slot: Drawing = engaged
    ? []
    : [
        fill(roundRect(x - 13, y - 56, 15, 114, 2), 'shadow'),
        shape(roundRect(x - 13, y - 12, 15, 26, 2), down('cast'), 'iron-d', 1.2),
      ];
  const glint = phase === 0 ? [-46, -6, 14] : [-34, -18, 30];
  const face: Drawing = engaged
    ? [
        fill(roundRect(x - gap - 12, y + glint[0], 9, 30, 4), 'mill-h', 0.9),
        fill(roundRect(x - gap - 12, y + glint[1], 9, 12, 4), 'mill-d', 0.4),
        fill(roundRect(x - gap - 12, y + glint[2], 9, 26, 4), 'mill-d', 0.4),
      ]
    : [...bolt(x - gap - 7, y - 40, 5), ...bolt(x - gap - 7, y + 38, 5)];
  return [
    ...slot,
    ...slab(x - gap - 14, y - 60, 14, 120, { r: 4, lip: 3, m: 'alu', top: down('alu'), elevation: 10 }),
    ...slab(x - gap - 25, y - 20, 13, 40, { r: 4, lip: 2, m: 'mill', top: down('mill'), elevation: 6 }),
    ...face,
  ];
}
