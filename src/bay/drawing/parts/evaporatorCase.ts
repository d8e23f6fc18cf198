/** Evaporator case at the firewall with its blower housing. */
import type { Part } from '../../../layout/layout';
import { dome } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape, stroke } from '../record';
import { bolt, canister, slab } from '../solids';
import { sizeOf } from './partSize';

export function evaporatorCase(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const vanes = x + w * sizeOf(part, 'vane', 0.42);
  const screws = [
    [14, 14],
    [w - 14, 14],
    [14, h - 12],
    [w - 14, h - 12],
    [w * 0.4, h - 10],
  ] as const;
  return [
    ...slab(x, y, w, h, { r: 18, lip: 46, m: 'plas', elevation: 52 }),
    stroke(roundRect(x + 14, y + 14, w - 28, h - 28, 10), 'plas-d', 2.4, 0.8),
    stroke(roundRect(x + 16, y + 16, w - 28, h - 28, 10), 'plas-h', 1.6, 0.5),
    ...repeat(7, (i) => [
      bar(vanes + i * 36, y + 26, vanes + i * 36, y + h - 26, 'plas-d', 4, 0.65),
      bar(vanes + 3 + i * 36, y + 26, vanes + 3 + i * 36, y + h - 26, 'plas-h', 1.5, 0.55),
    ]),
    ...screws.flatMap(([dx, dy]) => bolt(x + dx, y + dy, 6)),
    ...blower(x + sizeOf(part, 'bx', 88), y + h - 30),
  ];
}

const blower = (x: number, y: number): Drawing => [
  ...canister(x, y, 72, 34, 'plas', { elevation: 36 }),
  stroke(circle(x, y, 50), 'plas-d', 2.4, 0.8),
  shape(circle(x, y, 28), dome('iron'), 'iron-d', 2),
  fill(circle(x, y, 8), 'iron-d'),
  ...repeat(3, (i) => bolt(x + Math.cos(i * 2.09 + 0.5) * 60, y + Math.sin(i * 2.09 + 0.5) * 60, 5)),
];
