/** Receiver-drier: a slim pot with a milled head; the sight glass sits in the head. */
import type { Part } from '../../../layout/layout';
import { across, dome, lit } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, shape } from '../record';
import { canister } from '../solids';
import { strapBand } from './accumulator';
import { sizeOf } from './partSize';

export function drier(part: Part): Drawing {
  const [x, y] = part.at;
  const r = sizeOf(part, 'r');
  const lip = sizeOf(part, 'lip');
  return [
    ...canister(x, y, r, lip, 'alu', { elevation: 44 }),
    shape(strapBand(x, y + lip * 0.5, r + 3, 16), across('iron'), 'iron-d', 1.8),
    shape(roundRect(x - r * 0.92, y - 13, r * 1.84, 26, 6), lit('mill'), 'mill-d', 1.8),
    ...sightGlass(x + 6, y, 0),
  ];
}

/** Sight glass from above; `bubbles` is the share of foam behind it. */
export function sightGlass(x: number, y: number, bubbles: number, streaked = false): Drawing {
  const foam = [
    [-2.4, -1],
    [1.6, -2.6],
    [2.2, 1.8],
    [-1.2, 2.6],
    [0, 0],
    [3.4, -0.4],
    [-3.4, 1.4],
    [0.4, 3.6],
  ] as const;
  const shown = foam.slice(0, Math.round(bubbles * foam.length));
  return [
    shape(circle(x, y, 9), dome('zinc'), 'mill-d', 1.6),
    fill(circle(x, y, 5.4), 'floor-d'),
    ...shown.map(([dx, dy]) => shape(circle(x + dx, y + dy, 1.5), 'dew', 'white', 0.6)),
    ...(streaked ? [-3, 0, 3].map((dx) => bar(x + dx, y - 3.4, x + dx * 0.8, y + 3.6, 'zinc-a', 1.2)) : []),
    fill(circle(x - 1.6, y - 1.8, 1.8), 'alu-h'),
  ];
}
