/** Longitudinal engine: exhaust shield at picture left, plenum and runners at right, plugs down the middle, timing cover in front. */
import type { Part } from '../../../layout/layout';
import { move } from '../matrix';
import { across } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, ROUND, repeat, shape, stroke } from '../record';
import { bolt, canister, slab } from '../solids';
import { tube } from '../tubes';
import { oilCap } from './engineAcross';
import { sizeOf } from './partSize';

export function engineAlong(part: Part): Drawing {
  const [x, y] = part.at;
  const h = sizeOf(part, 'h');
  const cylinders = sizeOf(part, 'n');
  const sideBolts = cylinders > 4 ? 5 : 3;
  return [
    ...slab(x - 120, y - 10, 240, h + 36, { r: 14, lip: 60, m: 'iron', elevation: 60 }),
    ...slab(x - 104, y, 208, h, { r: 14, lip: 16, m: 'cast', elevation: 26 }),
    ...exhaustShield(x, y, h),
    ...intake(x, y, h, cylinders),
    ...cover(x, y, h, cylinders),
    ...repeat(sideBolts, (i) => [
      ...bolt(x - 90, y + 28 + i * 108, 6, 'cast'),
      ...bolt(x + 90, y + 28 + i * 108, 6, 'cast'),
    ]),
    ...timingCover(x, y + h),
  ];
}

function exhaustShield(x: number, y: number, h: number): Drawing {
  const ribs = Math.max(3, Math.floor((h - 98) / 62));
  const corners = [
    [x - 176, y + 50],
    [x - 116, y + 50],
    [x - 176, y + h - 80],
    [x - 116, y + h - 80],
  ] as const;
  return [
    ...slab(x - 184, y + 34, 80, h - 90, { r: 26, lip: 24, m: 'shld', elevation: 34 }),
    ...repeat(ribs, (i) => [
      fill(roundRect(x - 172, y + 60 + i * 62, 54, 30, 15), 'shld-c', 0.45),
      stroke(`M${x - 168} ${y + 88 + i * 62}q0 -26 26 -27h22`, 'shld-h', 2, 0.7),
    ]),
    ...corners.flatMap(([cx, cy]) => bolt(cx, cy, 6, 'shld')),
  ];
}

const intake = (x: number, y: number, h: number, cylinders: number): Drawing => [
  ...repeat(cylinders, (i) => {
    const at = y + 44 + i * 76;
    const d = `M${x + 92} ${at}C${x + 130} ${at} ${x + 140} ${at + 4} ${x + 196} ${at + 4}`;
    return [
      { ...stroke(d, 'shadow', 40, 0.3), matrix: move(12, 12) },
      ...tube(d, 38, 'cast'),
      shape(roundRect(x + 88, at - 27, 20, 54, 6), across('cast'), 'cast-d', 1.8),
    ];
  }),
  ...slab(x + 168, y + 14, 78, h - 42, { r: 34, lip: 18, m: 'cast', top: across('cast'), elevation: 44 }),
  ...repeat(cylinders, (i) => bar(x + 172, y + 46 + i * 76, x + 242, y + 46 + i * 76, 'cast-d', 2, 0.45)),
];

const cover = (x: number, y: number, h: number, cylinders: number): Drawing => [
  ...slab(x - 78, y + 14, 156, h - 30, { r: 26, lip: 20, m: 'plas', elevation: 20 }),
  ...repeat(2, (i) => [
    fill(roundRect(x - 56 + i * 78, y + 36, 34, h - 78, 14), 'plas-c', 0.7),
    stroke(`M${x - 54 + i * 78} ${y + h - 60}V${y + 50}q0 -12 14 -12h10`, 'plas-h', 2, 0.45),
  ]),
  ...repeat(cylinders, (i) => [
    ...canister(x, y + 52 + i * 74, 17, 8, 'rub', { elevation: 12 }),
    fill(circle(x, y + 52 + i * 74, 8), 'rub-d'),
  ]),
  stroke(`M${x + 26} ${y + 40}V${y + h - 66}`, 'rub-d', 11, 1, ROUND),
  stroke(`M${x + 26} ${y + 40}V${y + h - 66}`, 'rub-a', 7, 1, ROUND),
  ...repeat(cylinders, (i) => stroke(`M${x + 26} ${y + 52 + i * 74}h-12`, 'rub-a', 6, 1, ROUND)),
  ...oilCap(x - 40, y + h - 76, 29),
];

const timingCover = (x: number, y: number): Drawing => [
  ...slab(x - 112, y - 6, 224, 40, { r: 12, lip: 86, m: 'cast', elevation: 40 }),
  stroke(roundRect(x - 86, y + 40, 172, 70, 20), 'cast-d', 2.2, 0.6),
  ...[-96, 96, -40].flatMap((dx) => bolt(x + dx, y + 14, 6, 'cast')),
  ...slab(x + 24, y - 12, 66, 46, { r: 20, lip: 12, m: 'cast', elevation: 22 }),
  ...bolt(x + 36, y + 10, 6, 'cast'),
  ...bolt(x + 78, y + 10, 6, 'cast'),
];
