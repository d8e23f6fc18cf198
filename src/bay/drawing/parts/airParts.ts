/** Small parts of the cabin's air, and their like: the filter's lid, the blower's housing, boxes with a plug. */
import type { Part } from '../../../layout/layout';
import { down } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, repeat, shape, stroke } from '../record';
import { canister, slab } from '../solids';
import { sizeOf } from './partSize';

/** A flat lid with a rib along it and a clip at each end. */
export function filterLid(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  const clip = (at: number): Drawing => [
    shape(roundRect(at - 7, y + h / 2 - 11, 14, 22, 4), down('mill'), 'mill-d', 1.4),
  ];
  return [
    ...slab(x, y, w, h, { r: 9, lip: 8, m: 'plas', elevation: 12 }),
    stroke(roundRect(x + 12, y + 9, w - 24, h - 18, 5), 'plas-h', 1.6, 0.5),
    bar(x + 20, y + h / 2, x + w - 20, y + h / 2, 'plas-d', 3, 0.6),
    ...clip(x + 2),
    ...clip(x + w - 2),
  ];
}

/** A round housing with the motor's cap in the middle. */
export function blowerHousing(part: Part): Drawing {
  const [x, y] = part.at;
  const r = sizeOf(part, 'r');
  return [
    ...canister(x, y, r, 14, 'plas'),
    stroke(circle(x, y, r * 0.74), 'plas-d', 2, 0.7),
    ...canister(x, y, r * 0.42, 8, 'iron'),
  ];
}

/** A small box with its plug: a door motor, a thermostat, a relay. */
export function plugBox(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w');
  const h = sizeOf(part, 'h');
  return [
    ...slab(x, y, w, h, { r: 5, lip: 10, m: 'plas', elevation: 14 }),
    shape(roundRect(x + w - 16, y + h * 0.25, 20, h * 0.5, 3), down('resv'), 'resv-d', 1.4),
    ...repeat(2, (i) =>
      bar(x + 8, y + h * (0.34 + 0.32 * i), x + w - 22, y + h * (0.34 + 0.32 * i), 'plas-h', 1.4, 0.5),
    ),
  ];
}
