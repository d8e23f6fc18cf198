/** Small things on the lines: pressure switch, orifice tube, flange, block, grommet. */
import type { Part } from '../../../layout/layout';
import { chain, move, turn } from '../matrix';
import { down } from '../paints';
import { ellipse, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, placed, shape, stroke } from '../record';
import { bolt, shadow, slab } from '../solids';
import { tube } from '../tubes';
import { sizeOf } from './partSize';

export function pressureSwitch(part: Part): Drawing {
  const drawing: Drawing = [
    ...shadow(roundRect(0, -12, 58, 24, 5), 16),
    shape(roundRect(0, -10, 18, 20, 3), down('mill'), 'mill-d', 1.6),
    shape(roundRect(16, -14, 26, 28, 5), down('plas'), 'plas-d', 1.8),
    shape(roundRect(40, -10, 20, 20, 4), down('resv'), 'resv-d', 1.8),
    bar(44, -4, 56, -4, 'resv-d', 1.4, 0.7),
    bar(44, 3, 56, 3, 'resv-d', 1.4, 0.7),
  ];
  return placed(drawing, chain(move(...part.at), turn(sizeOf(part, 'turnDeg', 0))));
}

/** Drawn width of the line that holds the tube. */
const ORIFICE_LINE = 13.3;

/** Orifice tube: a swollen stretch with three dimple pairs. The dimples are all that shows. */
export function orifice(part: Part): Drawing {
  const half = ORIFICE_LINE * 0.5;
  const dimple = (k: number): Drawing => [
    stroke(`M${mm(-half - 5)} ${k}q4 4 0 8M${mm(half + 5)} ${k}q-4 4 0 8`, 'alu-d', 3.2),
    bar(-half - 1, k + 4, half + 1, k + 4, 'alu-c', 3, 0.9),
  ];
  return placed(
    [...tube('M0 -34V34', ORIFICE_LINE + 7, 'alu'), ...[-16, -2, 12].flatMap(dimple)],
    chain(move(...part.at), turn(sizeOf(part, 'turnDeg', 0))),
  );
}

export function flange(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w', 40);
  const h = sizeOf(part, 'h', 26);
  return [
    shape(roundRect(x - w / 2, y - h / 2, w, h, 10), down('mill'), 'mill-d', 1.8),
    fill(roundRect(x - w * 0.3, y - h * 0.26, w * 0.6, h * 0.52, 7), 'iron-d'),
  ];
}

export function block(part: Part): Drawing {
  const [x, y] = part.at;
  const w = sizeOf(part, 'w', 56);
  const h = sizeOf(part, 'h', 34);
  return [
    ...slab(x - w / 2, y - h / 2, w, h, { r: 8, lip: 9, m: 'mill', elevation: 16 }),
    ...(part.plain ? [] : bolt(x, y, 7)),
  ];
}

export function grommet(part: Part): Drawing {
  const [x, y] = part.at;
  const r = sizeOf(part, 'r', 18);
  return [
    shape(ellipse(x, y, r, r * 0.62), 'rub-d', 'rub-h', 2),
    fill(ellipse(x, y + 1, r * 0.72, r * 0.42), 'shadow'),
  ];
}
