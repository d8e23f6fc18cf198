/** A moulded panel over a port, held by clips at its corners: it lies over the line, and only its shape is to be seen. */
import type { PortCover } from '../../../layout/layout';
import { dome, down } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, repeat, shape, stroke } from '../record';
import { slab } from '../solids';

const RIB_MM = 22;

export function portCover({ rect: [x, y, w, h] }: PortCover): Drawing {
  const corners = [
    [16, 14],
    [w - 16, 14],
    [16, h - 14],
    [w - 16, h - 14],
  ] as const;
  return [
    ...slab(x, y, w, h, { r: 16, lip: 12, m: 'plas', elevation: 30 }),
    stroke(roundRect(x + 30, y + 12, w - 60, h - 24, 9), 'plas-d', 2, 0.8),
    ...repeat((w - 84) / RIB_MM, (i) => [
      bar(x + 46 + i * RIB_MM, y + 22, x + 46 + i * RIB_MM, y + h - 22, 'plas-d', 3, 0.6),
      bar(x + 49 + i * RIB_MM, y + 23, x + 49 + i * RIB_MM, y + h - 24, 'plas-h', 1.4, 0.45),
    ]),
    ...corners.flatMap(([dx, dy]) => [
      shape(circle(x + dx, y + dy, 8), dome('plas'), 'plas-d', 1.6),
      bar(x + dx - 4, y + dy, x + dx + 4, y + dy, 'plas-d', 2, 0.9),
    ]),
    shape(roundRect(x + w / 2 - 22, y + h - 8, 44, 13, 6), down('rub'), 'rub-d', 1.6),
  ];
}
