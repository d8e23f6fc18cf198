/**
 * A service fitting from the side for the look-closer view, with what can be measured: the width over the ring the
 * coupler slides on. R-134a snap-on fittings, 13 and 16 mm (SAE J639); one groove. Nothing says which side it is on.
 */
import type { BoreMm } from '../../../layout/layout';
import type { CapLook } from '../../bayFrame';
import { letter } from '../badge';
import { across, down } from '../paints';
import { ellipse, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, repeat, shape, text } from '../record';

/** Drawn millimetres to a true one. */
const SCALE = 4;

/** About the top of the fitting; the tube it stands on lies across below. */
export function fittingSide(bore: BoreMm, look: CapLook, tubeMm: number): Drawing {
  const d = bore * SCALE;
  const height = 150;
  return [
    ...tube(tubeMm * SCALE, height + 26),
    shape(roundRect(-d * 0.9, height - 10, d * 1.8, 46, 8), across('mill'), 'mill-d', 2.4),
    shape(outline(d, height), across('alu'), 'alu-d', 2.4, { join: 'round' }),
    shape(ellipse(0, 3, d * 0.32, 5), 'iron-d', 'alu-d', 1.4),
    fill(roundRect(-4, -4, 8, 9, 3), 'zinc-a'),
    ...(look === 'missing' ? measure(bore, d) : cap(bore, look, d, height)),
  ];
}

/** The snap-on ring, its groove and the neck below. */
const outline = (d: number, height: number): string => {
  const [r, n] = [mm(d / 2), mm(d * 0.36)];
  return `M${-r} ${height}V72L${-n} 58V42L${-r} 28V10Q${-r} 0 ${-r + 10} 0H${r - 10}Q${r} 0 ${r} 10V28L${n} 42V58L${r} 72V${height}Z`;
};

const tube = (width: number, y: number): Drawing => [
  fill(roundRect(-260, y + width * 0.6, 520, 18, 9), 'shadow', 0.3),
  shape(roundRect(-260, y, 520, width, 6), down('alu'), 'alu-d', 2.4),
];

/** Rule over the ring. */
function measure(bore: BoreMm, d: number): Drawing {
  const [r, y] = [d / 2, -34];
  return [
    bar(-r, y, r, y, 'alu-h', 2.4),
    ...[-r, r].map((x) => bar(x, y - 10, x, y + 24, 'alu-h', 2.4)),
    text(`${bore} mm`, 0, y - 14, 26, 'alu-h'),
  ];
}

function cap(bore: BoreMm, look: CapLook, d: number, height: number): Drawing {
  const w = d * 1.64;
  const swapped = look === 'swapped';
  const mark =
    look === 'letter' || swapped
      ? letter((bore === 13) === swapped ? 'H' : 'L', 0, height * 0.42, 44, 'alu-b')
      : [];
  return [
    shape(roundRect(-w / 2, -16, w, height, look === 'blank' ? 16 : 8), across('plas'), 'plas-d', 2.4),
    ...repeat(7, (i) =>
      bar(-w * 0.4 + (i * w * 0.8) / 6, 26, -w * 0.4 + (i * w * 0.8) / 6, height - 34, 'plas-h', 2.4, 0.5),
    ),
    ...mark,
  ];
}
