/** Small transverse three under one broad cover: a snorkel at the firewall, oil cap in front, exhaust shield, timing end at the left. */
import type { Part } from '../../../layout/layout';
import { move } from '../matrix';
import { down } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, fill, repeat, shape, stroke } from '../record';
import { bolt, slab } from '../solids';
import { tube } from '../tubes';
import { bellHousing, exhaustShield, oilCap, timingEnd } from './engineAcross';
import { sizeOf } from './partSize';

export function engineThree(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  return [
    ...slab(x - 8, y - 4, w + 16, 200, { r: 14, lip: 50, m: 'iron', elevation: 52 }),
    ...slab(x, y, w, 172, { r: 12, lip: 14, m: 'cast', elevation: 24 }),
    ...bellHousing(x + w, y - 10),
    ...snorkel(x, y, w),
    ...exhaustShield(x - 30, y - 8, w + 30),
    ...broadCover(x, y, w),
    ...timingEnd(x, y),
  ];
}

function snorkel(x: number, y: number, w: number): Drawing {
  const d = `M${x + 60} ${y + 20}C${x + 60} ${y - 34} ${x + 130} ${y - 42} ${x + w + 20} ${y - 40}`;
  return [
    { ...stroke(d, 'shadow', 50, 0.3), matrix: move(12, 10) },
    ...tube(d, 46, 'plas', 'round'),
    shape(roundRect(x + w - 20, y - 66, 24, 52, 6), down('cast'), 'cast-d', 1.8),
  ];
}

const broadCover = (x: number, y: number, w: number): Drawing => [
  ...slab(x + 10, y + 14, w - 22, 140, { r: 34, lip: 24, m: 'plas', elevation: 26 }),
  ...repeat(3, (i) => {
    const at = x + 58 + i * ((w - 150) / 2);
    return [
      { ...shape(roundRect(at - 24, y + 30, 62, 92, 20), 'plas-c', 'plas-d', 1.6), fillAlpha: 0.75 },
      stroke(`M${at - 18} ${y + 104}V${y + 50}q0 -14 14 -14h18`, 'plas-h', 2, 0.45),
    ];
  }),
  ...repeat(2, (i) =>
    bar(x + 34, y + 138 + i * 6, x + w - 90, y + 138 + i * 6, i ? 'plas-h' : 'plas-d', 1.6, 0.5),
  ),
  fill(roundRect(x + w - 72, y + 104, 50, 50, 25), 'plas-d', 0.6),
  ...oilCap(x + w - 47, y + 126, 24),
  ...bolt(x + 26, y + 30, 6, 'plas'),
  ...bolt(x + w - 30, y + 30, 6, 'plas'),
];
