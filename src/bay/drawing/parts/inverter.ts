/** Inverter on the drive unit: a flat cast lid with cooling ribs, screws all round, coolant necks in front, a warning plate. */
import type { Part } from '../../../layout/layout';
import { down } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, repeat, shape, stroke } from '../record';
import { bolt, slab } from '../solids';
import { sizeOf } from './partSize';
import { warningPlate } from './warningPlate';

const RIB_MM = 26;

export function inverter(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const ribs = Math.floor((w - 190) / RIB_MM);
  return [
    ...slab(x - 10, y + 8, w + 20, h + 4, { r: 14, lip: 46, m: 'cast', elevation: 56 }),
    ...slab(x, y, w, h, { r: 12, lip: 14, m: 'cast', elevation: 20 }),
    stroke(roundRect(x + 18, y + 18, w - 36, h - 36, 8), 'cast-d', 2, 0.6),
    ...repeat(ribs, (i) => {
      const at = x + 160 + i * RIB_MM;
      return [
        shape(roundRect(at, y + 34, 10, h - 68, 5), 'cast-a', 'cast-d', 1.4),
        bar(at + 2.5, y + 40, at + 2.5, y + h - 42, 'cast-h', 1.6, 0.7),
      ];
    }),
    ...warningPlate(x + 84, y + h * 0.44, 56),
    ...screws(x, y, w, h),
    ...[0.14, 0.9].flatMap((share) => neck(x + w * share, y + h)),
  ];
}

const screws = (x: number, y: number, w: number, h: number): Drawing =>
  repeat(7, (i) => {
    const at = x + 16 + (i * (w - 32)) / 6;
    return [...bolt(at, y + 9, 5), ...bolt(at, y + h - 9, 5)];
  });

const neck = (x: number, y: number): Drawing => [
  ...slab(x - 18, y - 4, 36, 24, { r: 8, lip: 8, m: 'mill', top: down('mill'), elevation: 10 }),
];
