/** Where the lines of a rear unit leave the bay: a plate with two grommets in the firewall. */
import type { Part } from '../../../layout/layout';
import { lit } from '../paints';
import { ellipse, roundRect } from '../paths';
import { type Drawing, fill, shape } from '../record';
import { bolt } from '../solids';
import { sizeOf } from './partSize';

export function rearUnit(part: Part): Drawing {
  const [x, y] = part.at;
  const [apart, r] = [sizeOf(part, 'apart'), sizeOf(part, 'r')];
  const w = apart + r * 2 + 14;
  const hole = (at: number, k: number): Drawing => [
    shape(ellipse(at, y, r * k, r * k * 0.66), 'rub-d', 'rub-h', 2),
    fill(ellipse(at, y + 1, r * k * 0.74, r * k * 0.44), 'shadow'),
  ];
  return [
    shape(roundRect(x - w / 2, y - r - 8, w, r * 2 + 12, 10), lit('cast'), 'cast-d', 2),
    ...hole(x - apart / 2, 1),
    ...hole(x + apart / 2, 0.84),
    ...bolt(x, y - r, 5),
    ...bolt(x, y + r - 4, 5),
  ];
}
