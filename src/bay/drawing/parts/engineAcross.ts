/** Transverse four: intake at the firewall, cover with four coils, exhaust shield at the front, timing end at the left. */
import type { Part } from '../../../layout/layout';
import { move } from '../matrix';
import { down } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape, stroke } from '../record';
import { bolt, canister, slab } from '../solids';
import { tube } from '../tubes';
import { sizeOf } from './partSize';

export function engineAcross(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  return [
    ...slab(x - 10, y - 6, w + 20, 208, { r: 14, lip: 56, m: 'iron', elevation: 56 }),
    ...slab(x, y, w, 176, { r: 12, lip: 14, m: 'cast', elevation: 24 }),
    ...bellHousing(x + w, y),
    ...intake(x, y, w),
    ...cover(x, y, w),
    ...repeat(5, (i) => bolt(x + 34 + (i * (w - 68)) / 4, y + 12, 6, 'cast')),
    ...exhaustShield(x, y, w),
    ...timingEnd(x, y),
  ];
}

export const bellHousing = (x: number, y: number): Drawing => [
  ...slab(x - 6, y + 20, 150, 196, { r: 30, lip: 40, m: 'cast', elevation: 44 }),
  ...repeat(5, (i) => bar(x + 24 + i * 24, y + 36, x + 30 + i * 24, y + 206, 'cast-d', 3, 0.5)),
  ...bolt(x + 12, y + 40, 7),
  ...bolt(x + 12, y + 190, 7),
];

const intake = (x: number, y: number, w: number): Drawing => [
  ...repeat(4, (i) => {
    const at = x + 78 + i * 118;
    const d = `M${at} ${y + 26}C${at} ${y - 20} ${at + 4} ${y - 30} ${at + 4} ${y - 66}`;
    return [
      { ...stroke(d, 'shadow', 42, 0.3), matrix: move(12, 10) },
      ...tube(d, 40, 'cast'),
      shape(roundRect(at - 30, y + 8, 60, 20, 6), down('cast'), 'cast-d', 1.8),
    ];
  }),
  ...slab(x + 36, y - 104, w - 72, 62, { r: 30, lip: 14, m: 'cast', top: down('cast'), elevation: 34 }),
  ...slab(x + w - 46, y - 98, 52, 52, { r: 10, lip: 12, m: 'mill', elevation: 20 }),
];

const cover = (x: number, y: number, w: number): Drawing => [
  ...slab(x + 16, y + 22, w - 32, 124, { r: 30, lip: 20, m: 'plas', elevation: 22 }),
  { ...shape(roundRect(x + 46, y + 66, w - 150, 34, 17), 'plas-c', 'plas-d', 1.6), fillAlpha: 0.8 },
  ...repeat(4, (i) =>
    bar(x + 40, y + 38 + i * 6.5, x + w - 60, y + 38 + i * 6.5, i % 2 ? 'plas-h' : 'plas-d', 1.6, 0.5),
  ),
  ...repeat(4, (i) => {
    const at = x + 82 + i * 98;
    return [
      ...slab(at - 22, y + 64, 44, 38, { r: 8, lip: 6, m: 'rub', elevation: 12 }),
      ...bolt(at + 13, y + 73, 4.5),
      shape(roundRect(at - 32, y + 74, 14, 18, 4), 'iron-a', 'iron-d', 1.3),
    ];
  }),
  ...oilCap(x + w - 70, y + 84, 30),
];

export const oilCap = (x: number, y: number, r: number): Drawing => [
  ...canister(x, y, r, 14, 'rub', { elevation: 16 }),
  { ...shape(roundRect(x - 23, y - 6, 46, 12, 5), down('rub'), 'rub-h', 1.4), inkAlpha: 0.5 },
];

export const exhaustShield = (x: number, y: number, w: number): Drawing => [
  ...slab(x + 96, y + 168, w - 170, 74, { r: 24, lip: 30, m: 'shld', elevation: 34 }),
  ...repeat((w - 194) / 44, (i) => [
    fill(roundRect(x + 120 + i * 44, y + 184, 28, 40, 14), 'shld-c', 0.5),
    stroke(`M${x + 122 + i * 44} ${y + 214}v-16q1 -12 12 -12h4`, 'shld-h', 2, 0.7),
  ]),
  ...bolt(x + 108, y + 182, 6, 'shld'),
  ...bolt(x + w - 88, y + 228, 6, 'shld'),
  ...bolt(x + w - 88, y + 182, 6, 'shld'),
];

export const timingEnd = (x: number, y: number): Drawing => [
  ...slab(x - 78, y - 12, 84, 192, { r: 18, lip: 46, m: 'plas', elevation: 36 }),
  stroke(roundRect(x - 64, y + 6, 56, 156, 12), 'plas-d', 2, 0.8),
  ...bolt(x - 66, y + 2, 5),
  ...bolt(x - 66, y + 168, 5),
  ...bolt(x - 8, y + 2, 5),
];
