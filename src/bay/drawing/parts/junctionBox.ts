/** Box that parts the high voltage among its consumers, and the plug that is drawn to cut it off for work. */
import type { Part } from '../../../layout/layout';
import { across, dome, down } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape, stroke } from '../record';
import { bolt, slab } from '../solids';
import { sizeOf } from './partSize';
import { warningPlate } from './warningPlate';

export function junctionBox(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const corners = [
    [14, 14],
    [w - 14, 14],
    [14, h - 14],
    [w - 14, h - 14],
  ] as const;
  return [
    ...slab(x, y, w, h, { r: 14, lip: 34, m: 'plas', elevation: 40 }),
    stroke(roundRect(x + 24, y + 22, w - 48, h - 44, 10), 'plas-d', 2, 0.8),
    ...warningPlate(x + w * 0.4, y + h * 0.5, 44),
    ...corners.flatMap(([dx, dy]) => bolt(x + dx, y + dy, 6)),
    ...repeat(2, (i) => socket(x + 34 + i * 60, y + h + 6)),
  ];
}

const socket = (x: number, y: number): Drawing => [
  ...slab(x - 18, y - 12, 36, 26, { r: 6, lip: 8, m: 'cable', elevation: 12 }),
];

export function servicePlug(part: Part): Drawing {
  const [x, y] = part.at;
  return [
    ...slab(x - 24, y - 22, 48, 44, { r: 8, lip: 12, m: 'plas', elevation: 18 }),
    ...slab(x - 18, y - 30, 36, 46, { r: 10, lip: 10, m: 'cable', top: across('cable'), elevation: 22 }),
    shape(roundRect(x - 10, y - 22, 20, 26, 8), 'plas-d', 'cable-d', 2),
    bar(x - 8, y + 12, x + 8, y + 12, 'cable-d', 2.4, 0.8),
    fill(circle(x + 12, y - 24, 3.4), 'cable-d'),
  ];
}

/** A plug of an orange cable on a machine, lying across. */
export const cablePlug = (x: number, y: number): Drawing => [
  ...slab(x - 24, y - 15, 48, 30, { r: 7, lip: 8, m: 'cable', top: down('cable'), elevation: 14 }),
  bar(x - 12, y - 8, x - 12, y + 10, 'cable-d', 2.4, 0.7),
  shape(circle(x + 10, y, 5), dome('cable'), 'cable-d', 1.4),
];
