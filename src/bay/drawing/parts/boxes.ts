/** Fuse box and air cleaner. */
import type { Part } from '../../../layout/layout';
import { down } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, repeat, shape, stroke } from '../record';
import { slab } from '../solids';
import { sizeOf } from './partSize';

export function fusebox(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  return [
    ...slab(x, y, w, h, { r: 10, lip: 22, m: 'plas', elevation: 30 }),
    { ...shape(roundRect(x + 12, y + 12, w - 24, h - 24, 6), 'plas-a', 'plas-d', 1.6), fillAlpha: 0.5 },
    ...repeat(12, (i) => {
      const [column, row] = [i % 3, Math.floor(i / 3)];
      const cell = roundRect(
        x + 22 + (column * (w - 44)) / 3,
        y + 24 + (row * (h - 48)) / 4,
        (w - 44) / 3 - 8,
        (h - 48) / 4 - 9,
        3,
      );
      return stroke(cell, 'plas-h', 1.6, 0.42);
    }),
    shape(roundRect(x + w * 0.3, y - 7, w * 0.4, 14, 5), down('plas'), 'plas-d', 1.6),
  ];
}

const CLIPS = [
  [0.18, 0],
  [0.82, 0],
  [0.18, 1],
  [0.82, 1],
] as const;

export function airbox(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  return [
    ...slab(x, y, w, h, { r: 20, lip: 40, m: 'plas', elevation: 48 }),
    stroke(roundRect(x + 16, y + 14, w - 32, h - 28, 12), 'plas-d', 2.4, 0.8),
    stroke(roundRect(x + 18, y + 16, w - 34, h - 30, 12), 'plas-h', 1.8, 0.55),
    ...repeat((h - 60) / 22, (i) => [
      shape(roundRect(x + 34, y + 32 + i * 22, w - 68, 9, 4.5), 'plas-c', 'plas-d', 1),
      bar(x + 40, y + 42 + i * 22, x + w - 40, y + 42 + i * 22, 'plas-h', 1.4, 0.5),
    ]),
    ...CLIPS.map(([u, v]) =>
      shape(roundRect(x + w * u - 14, y + h * v - 9, 28, 20, 5), down('mill'), 'mill-d', 1.5),
    ),
  ];
}
