/** Drive motor and reduction gear of an electric car, low in the bay: a ribbed casing whose front shows below the inverter. */
import type { Part } from '../../../layout/layout';
import { down } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, repeat, shape, stroke } from '../record';
import { bolt, slab } from '../solids';
import { sizeOf } from './partSize';

export function driveUnit(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const motor = w * 0.6;
  return [
    ...slab(x, y, w, h, { r: 30, lip: 30, m: 'iron', elevation: 40 }),
    ...slab(x + 14, y + h * 0.36, motor, h * 0.6, {
      r: 60,
      lip: 26,
      m: 'cast',
      top: down('cast'),
      elevation: 30,
    }),
    ...repeat(9, (i) => {
      const at = x + 52 + (i * (motor - 90)) / 8;
      return [
        bar(at, y + h * 0.4, at, y + h * 0.94, 'cast-d', 4, 0.6),
        bar(at + 4, y + h * 0.42, at + 4, y + h * 0.92, 'cast-h', 1.6, 0.45),
      ];
    }),
    ...slab(x + motor + 8, y + h * 0.3, w - motor - 24, h * 0.66, {
      r: 40,
      lip: 30,
      m: 'cast',
      elevation: 34,
    }),
    stroke(circle(x + motor + (w - motor) / 2, y + h * 0.62, 52), 'cast-d', 3, 0.7),
    shape(roundRect(x + motor + 34, y + h * 0.9, 60, 22, 6), down('mill'), 'mill-d', 1.6),
    ...repeat(4, (i) => bolt(x + motor + 26 + (i % 2) * (w - motor - 62), y + h * (i < 2 ? 0.36 : 0.88), 7)),
  ];
}
