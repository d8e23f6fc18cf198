/** A moulded panel over a port, held by clips at its corners: it lies over the line, and only its shape is to be seen. */
import type { PortCover } from '../../../layout/layout';
import { dome, down } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, repeat, shape, stroke } from '../record';
import { slab } from '../solids';

const RIB_MM = 22;

export function portCover({ rect: [x, y, w, h] }: PortCover): Drawing {
  const ribs = Math.floor((w - 84) / RIB_MM);
  const corners = [
    [16, 14],
    [w - 16, 14],
    [16, h - 14],
    [w - 16, h - 14],
  ] as const;
  return [
    ...slab(x, y, w, h, { r: 16, lip: 12, m: 'plas', elevation: 30 }),
    stroke(roundRect(x + 30, y + 12, w - 60, h - 24, 9), 'plas-d', 2, 0.8),
    ...repeat(ribs, (i) => {
      const at = x + w / 2 + (i - (ribs - 1) / 2) * RIB_MM;
      return [
        bar(at, y + 22, at, y + h - 22, 'plas-d', 3, 0.6),
        bar(at + 3, y + 23, at + 3, y + h - 24, 'plas-h', 1.4, 0.45),
      ];
    }),
    ...corners.flatMap(([dx, dy]) => [
      shape(circle(x + dx, y + dy, 8), dome('plas'), 'plas-d', 1.6),
      bar(x + dx - 4, y + dy, x + dx + 4, y + dy, 'plas-d', 2, 0.9),
    ]),
    shape(roundRect(x + w / 2 - 22, y + h - 8, 44, 13, 6), down('rub'), 'rub-d', 1.6),
  ];
}
