/**
 * A service fitting from the side for the look-closer view, with what can be measured: the width over the ring the
 * coupler slides on. R-134a: snap-on, one groove, 13 and 16 mm (SAE J639); R-1234yf: snap-on with a foot collar and a
 * narrow top, 14 and 17 mm; R-12: threads of 7/16 and 3/8 in (from memory). Nothing says which side it is on.
 */
import { isThreaded, letterOf, otherBore } from '../../../layout/bores';
import type { BoreMm } from '../../../layout/layout';
import type { CapLook } from '../../bayFrame';
import { letter } from '../badge';
import { across, down } from '../paints';
import { ellipse, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, ROUND_JOIN, repeat, shape, text } from '../record';

/** Drawn millimetres to a true one. */
const SCALE = 4;

/** About the top of the fitting; the tube it stands on lies across below. */
export function fittingSide(bore: BoreMm, look: CapLook, tubeMm: number): Drawing {
  const d = bore * SCALE;
  const height = 150;
  return [
    ...tube(tubeMm * SCALE, height + 26),
    shape(roundRect(-d * 0.9, height - 10, d * 1.8, 46, 8), across('mill'), 'mill-d', 2.4),
    ...fitting(bore, d, height),
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

function fitting(bore: BoreMm, d: number, height: number): Drawing {
  if (isThreaded(bore)) return threaded(d, height);
  if (bore === 14 || bore === 17) return collared(d, height);
  return [shape(outline(d, height), across('alu'), 'alu-d', 2.4, ROUND_JOIN)];
}

const threaded = (d: number, height: number): Drawing => [
  shape(roundRect(-d / 2, 0, d, height, 4), across('zinc'), 'zinc-d', 2.4),
  ...repeat(8, (i) => bar(-d / 2, 12 + i * 9, d / 2, 16 + i * 9, 'zinc-d', 2.2, 0.75)),
  shape(roundRect(-d * 0.7, height - 52, d * 1.4, 34, 4), across('zinc'), 'zinc-d', 2.2),
];

function collared(d: number, height: number): Drawing {
  const [r, n, top] = [mm(d / 2), mm(d * 0.34), mm(d * 0.3)];
  const d2 =
    `M${-n} ${height}V96L${-r} 84V62L${-n} 50V34L${-top} 26V8Q${-top} 0 ${-top + 8} 0H${top - 8}Q${top} 0 ${top} 8V26` +
    `L${n} 34V50L${r} 62V84L${n} 96V${height}Z`;
  return [
    shape(d2, across('alu'), 'alu-d', 2.4, ROUND_JOIN),
    shape(roundRect(-d * 0.66, height - 38, d * 1.32, 18, 6), across('alu'), 'alu-d', 2.2),
  ];
}

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
      ? letter(letterOf(swapped ? otherBore(bore) : bore), 0, height * 0.42, 44, 'alu-b')
      : [];
  return [
    shape(roundRect(-w / 2, -16, w, height, look === 'blank' ? 16 : 8), across('plas'), 'plas-d', 2.4),
    ...repeat(7, (i) =>
      bar(-w * 0.4 + (i * w * 0.8) / 6, 26, -w * 0.4 + (i * w * 0.8) / 6, height - 34, 'plas-h', 2.4, 0.5),
    ),
    ...mark,
  ];
}
