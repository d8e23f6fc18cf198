/** The fender mat: where loose gear lies. */
import type { RectMm } from '../../../layout/layout';
import { move } from '../matrix';
import { across } from '../paints';
import { roundRect } from '../paths';
import { type Drawing, fill, stroke } from '../record';

export function mat([x, y, w, h]: RectMm): Drawing {
  const outline = roundRect(x, y, w, h, 16);
  return [
    { ...fill(outline, 'shadow', 0.22), matrix: move(8, 9) },
    fill(outline, across('apron')),
    stroke(outline, 'apron-d', 2),
    stroke(roundRect(x + 9, y + 9, w - 18, h - 18, 10), 'apron-h', 1.8, 0.7, { dash: [9, 7] }),
  ];
}
