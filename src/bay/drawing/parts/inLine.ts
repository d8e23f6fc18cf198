/**
 * What sits in a refrigerant line and can be followed through: union, muffler, filter, sight glass, switch on its block.
 * Drawn on an upright line; `turnDeg` turns them with it, `d` is the line's true diameter.
 */
import type { Part } from '../../../layout/layout';
import { chain, move, turn } from '../matrix';
import { across } from '../paints';
import { roundRect } from '../paths';
import { bar, type Drawing, mm, placed, repeat, shape, stroke } from '../record';
import { shadow, slab } from '../solids';
import { hexNut } from '../tubes';
import { sightGlass } from './drier';
import { pressureSwitch } from './fittings';
import { sizeOf } from './partSize';

/** Drawn over true diameter, as of every refrigerant line. */
const SCALE = 1.4;
const widthOf = (part: Part): number => sizeOf(part, 'd') * SCALE;
const onLine = (part: Part, drawing: Drawing): Drawing =>
  placed(drawing, chain(move(...part.at), turn(sizeOf(part, 'turnDeg', 0))));

/** Two nuts face to face. */
export function union(part: Part): Drawing {
  const w = widthOf(part);
  const upright = { tx: 0, ty: 1, x: 0 };
  return onLine(part, [
    ...shadow(roundRect(-w * 0.9, -27, w * 1.8, 54, 3), 14),
    ...hexNut({ ...upright, y: -13 }, 24, mm(w * 1.8)),
    ...hexNut({ ...upright, y: 14 }, 22, mm(w * 1.56)),
  ]);
}

/** A smooth can, wider than its line, with rolled ends. */
export function muffler(part: Part): Drawing {
  const half = mm(widthOf(part) * 0.5 + 13);
  return onLine(part, [
    ...shadow(roundRect(-half, -46, half * 2, 92, 20), 26),
    shape(roundRect(-half, -46, half * 2, 92, 20), across('alu'), 'alu-d', 2.2),
    bar(-half + 4, -28, half - 4, -28, 'alu-c', 2.4, 0.9),
    bar(-half + 4, 28, half - 4, 28, 'alu-c', 2.4, 0.9),
  ]);
}

/** A short can between two nuts, with a dark band round it. */
export function lineFilter(part: Part): Drawing {
  const w = widthOf(part);
  const half = mm(w * 0.5 + 8);
  const upright = { tx: 0, ty: 1, x: 0 };
  return onLine(part, [
    ...shadow(roundRect(-half, -30, half * 2, 60, 6), 22),
    ...hexNut({ ...upright, y: -33 }, 16, mm(w * 1.6)),
    ...hexNut({ ...upright, y: 33 }, 16, mm(w * 1.6)),
    shape(roundRect(-half, -28, half * 2, 56, 6), across('mill'), 'mill-d', 2),
    shape(roundRect(-half, -9, half * 2, 18, 0), across('plas'), 'plas-d', 1.4),
  ]);
}

export function sightBlock(part: Part): Drawing {
  return onLine(part, [
    ...slab(-21, -26, 42, 52, { r: 8, lip: 8, m: 'mill', elevation: 16 }),
    ...sightGlass(0, 0, 0),
  ]);
}

export function switchBlock(part: Part): Drawing {
  return [
    ...onLine(part, [
      ...slab(-19, -24, 38, 48, { r: 7, lip: 8, m: 'mill', elevation: 16 }),
      ...repeat(2, (i) => stroke(`M-12 ${-12 + i * 24}H12`, 'mill-c', 2.4, 0.8)),
    ]),
    ...pressureSwitch(part),
  ];
}
