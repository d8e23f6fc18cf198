/** Electric compressor, lying low across the car: scroll head at the left, motor, finned electronics at the right with an orange plug. */
import type { Part } from '../../../layout/layout';
import { down } from '../paints';
import { bar, type Drawing, repeat } from '../record';
import { bolt, slab } from '../solids';
import { cablePlug } from './junctionBox';
import { sizeOf } from './partSize';

export function compressorElectric(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const head = w * 0.24;
  const box = w * 0.3;
  return [
    ...slab(x + 20, y + 36, w - 40, 24, { r: 8, lip: 10, m: 'iron', elevation: 20 }),
    ...slab(x, y - 44, head, 88, { r: 20, lip: 14, m: 'cast', top: down('cast'), elevation: 26 }),
    ...slab(x + head - 4, y - 48, w - head - box + 8, 96, {
      r: 10,
      lip: 16,
      m: 'mill',
      top: down('mill'),
      elevation: 30,
    }),
    ...slab(x + w - box, y - 52, box, 104, { r: 10, lip: 14, m: 'mill', elevation: 32 }),
    ...repeat(5, (i) => {
      const at = x + w - box + 14 + i * ((box - 28) / 4);
      return [
        bar(at, y - 44, at, y + 8, 'mill-d', 3, 0.6),
        bar(at + 3, y - 43, at + 3, y + 6, 'mill-h', 1.4, 0.7),
      ];
    }),
    ...[-30, 30].flatMap((dy) => [...bolt(x + head - 12, y + dy, 6), ...bolt(x + w - box - 12, y + dy, 6)]),
    ...bolt(x + 16, y, 7, 'cast'),
    ...cablePlug(x + w - box * 0.5, y + 30),
  ];
}
