/** Accumulator: an upright aluminium pot in an iron strap, its welded top ring bright. */
import type { Part } from '../../../layout/layout';
import { across } from '../paints';
import { circle, roundRect } from '../paths';
import { type Drawing, mm, shape, stroke } from '../record';
import { bolt, canister } from '../solids';
import { sizeOf } from './partSize';

export function accumulator(part: Part): Drawing {
  const [x, y] = part.at;
  const r = sizeOf(part, 'r');
  const lip = sizeOf(part, 'lip');
  return [
    shape(roundRect(x - r - 10, y + lip * 0.5, r * 2 + 20, 24, 8), across('iron'), 'iron-d', 2),
    ...canister(x, y, r, lip, 'alu', { elevation: 70 }),
    shape(strapBand(x, y + lip * 0.46, r + 3, 20), across('iron'), 'iron-d', 2),
    stroke(circle(x, y, r * 0.8), 'alu-c', 2.6, 0.8),
    stroke(circle(x, y, r * 0.8 - 2), 'alu-h', 1.6, 0.9),
    ...bolt(x + r + 4, y + lip * 0.46 + 26, 7),
  ];
}

/** The front half of a band round an upright cylinder. */
export const strapBand = (x: number, y: number, r: number, height: number): string =>
  `M${mm(x - r)} ${mm(y)}A${r} ${r} 0 0 0 ${mm(x + r)} ${mm(y)}V${mm(y + height)}A${r} ${r} 0 0 1 ${mm(x - r)} ${mm(y + height)}Z`;
