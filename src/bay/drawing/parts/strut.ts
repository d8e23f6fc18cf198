/** Top of a suspension strut in its tower. */
import type { Part } from '../../../layout/layout';
import { across, dome } from '../paints';
import { circle } from '../paths';
import { type Drawing, fill, repeat, shape, stroke } from '../record';
import { bolt } from '../solids';
import { sizeOf } from './partSize';

export function strut(part: Part): Drawing {
  const [x, y] = part.at;
  const r = sizeOf(part, 'r');
  return [
    fill(circle(x + 14, y + 12, r), 'shadow', 0.25),
    shape(circle(x, y, r), dome('apron'), 'apron-d', 2),
    stroke(circle(x, y, r * 0.76), 'apron-d', 2, 0.6),
    shape(circle(x, y, r * 0.5), dome('plas'), 'plas-d', 2),
    fill(circle(x, y, r * 0.2), across('iron')),
    ...repeat(3, (i) =>
      bolt(x + Math.cos(i * 2.094 + 0.6) * r * 0.64, y + Math.sin(i * 2.094 + 0.6) * r * 0.64, 7),
    ),
  ];
}
