/**
 * A service fitting from the side for the look-closer view, with what can be measured: the width over the ring the
 * coupler slides on. R-134a: snap-on, one groove, 13 and 16 mm (SAE J639); R-1234yf: snap-on with a foot collar, a low
 * groove and a narrow top, 14 and 17 mm; R-12: threads of 7/16 and 3/8 in (from memory). All at one scale, so that sizes
 * compare. Nothing says which side it is on.
 */
import { isThreaded, letterOf, otherBore } from '../../../layout/bores';
import type { BoreMm } from '../../../layout/layout';
import type { CapLook } from '../../bayFrame';
import { letter } from '../badge';
import { turn } from '../matrix';
import { across, down } from '../paints';
import { ellipse, roundRect } from '../paths';
import {
  bar,
  type Drawing,
  fill,
  mm,
  placed,
  ROUND,
  ROUND_JOIN,
  repeat,
  shape,
  stroke,
  text,
} from '../record';
import { lineShadow, shadow } from '../solids';

/** Drawn millimetres to a true one. */
const SCALE = 4;
const BASE = 34;

/** How far a fitting stands out of its base, drawn. */
export function fittingHeight(bore: BoreMm): number {
  if (isThreaded(bore)) return 84;
  return bore === 14 || bore === 17 ? 112 : 98;
}

/** About the middle of its top; the tube it stands on lies across below. */
export function fittingSide(bore: BoreMm, look: CapLook, tubeMm: number, strap = false): Drawing {
  const d = bore * SCALE;
  const height = fittingHeight(bore);
  const bare = look === 'missing';
  return [
    ...tube(tubeMm * SCALE, height + BASE - 8),
    ...shadow(roundRect(-d / 2, 0, d, height, 6), 20),
    ...fitting(bore, d, height),
    ...core(d),
    ...base(d, height),
    ...(bare ? measure(bore, d) : cap(bore, look, d, height)),
    ...(strap ? strapSide(d, height, bare) : []),
  ];
}

function base(d: number, height: number): Drawing {
  const w = d + 34;
  return [
    ...shadow(roundRect(-w / 2, height, w, BASE, 5), 12),
    shape(roundRect(-w / 2, height, w, BASE, 5), across('mill'), 'mill-d', 2.4),
    ...[-0.22, 0.26].map((k) => bar(w * k, height + 3, w * k, height + BASE - 3, 'mill-d', 1.8, 0.6)),
    bar(-w / 2 + 5, height + 3, w * 0.2, height + 3, 'mill-h', 1.8, 0.8),
  ];
}

function fitting(bore: BoreMm, d: number, height: number): Drawing {
  if (isThreaded(bore)) return threaded(d, height);
  if (bore === 14 || bore === 17) return collared(d, height);
  return grooved(d, height);
}

/** Mouth, and the pin of the valve core in it. */
const core = (d: number): Drawing => [
  shape(ellipse(0, 3.4, d * 0.3, 5), 'iron-d', 'mill-d', 1.4),
  fill(ellipse(0, 4.4, d * 0.17, 2.6), 'zinc-b'),
  shape(roundRect(-3, -4, 6, 9, 2.4), across('zinc'), 'zinc-d', 1),
];

/** A ring, a groove, a neck that widens to the foot. */
function grooved(d: number, height: number): Drawing {
  const [r, n] = [mm(d / 2), mm(d * 0.36)];
  const y = (share: number): number => mm(height * share);
  const outline =
    `M${-r} ${height}V${y(0.52)}L${-n} ${y(0.42)}V${y(0.3)}L${-r} ${y(0.2)}V9Q${-r} 0 ${-r + 9} 0H${r - 9}Q${r} 0 ${r} 9V${y(0.2)}` +
    `L${n} ${y(0.3)}V${y(0.42)}L${r} ${y(0.52)}V${height}Z`;
  return [
    shape(outline, across('alu'), 'alu-d', 2.4, ROUND_JOIN),
    bar(-n, y(0.36), n, y(0.36), 'alu-c', 3.4, 0.8),
    bar(-r + 4, y(0.54), r * 0.4, y(0.54), 'alu-h', 2, 0.8),
    bar(-r + 7, 4, r * 0.2, 4, 'alu-h', 2, 0.8),
  ];
}

/** Zinc thread, a plain tip, a hexagon at its foot. */
function threaded(d: number, height: number): Drawing {
  const [r, tip] = [mm(d / 2), mm(d * 0.32)];
  const outline = `M${-r} ${height}V16L${-tip} 0H${tip}L${r} 16V${height}Z`;
  const turns = Math.floor((height - 44) / 6.2);
  return [
    shape(outline, across('zinc'), 'zinc-d', 2.2, ROUND_JOIN),
    ...repeat(turns, (i) => [
      bar(-r - 1.4, 25 + i * 6.2, r + 1.4, 20.5 + i * 6.2, 'zinc-d', 2.4, 0.9),
      bar(-r + 2, 27.6 + i * 6.2, r * 0.1, 25.4 + i * 6.2, 'zinc-h', 1.3, 0.7),
    ]),
  ];
}

/** A collar at the foot, a groove low on the body, a narrow top. */
function collared(d: number, height: number): Drawing {
  const [foot, r, n, top] = [d * 0.66, d / 2, d * 0.4, d * 0.37].map(mm);
  const y = (share: number): number => mm(height * share);
  const outline =
    `M${-foot} ${height}V${y(0.72)}H${-r}V${y(0.66)}L${-n} ${y(0.6)}V${y(0.53)}L${-r} ${y(0.47)}V${y(0.2)}L${-top} ${y(0.13)}V7` +
    `Q${-top} 0 ${-top + 7} 0H${top - 7}Q${top} 0 ${top} 7V${y(0.13)}L${r} ${y(0.2)}V${y(0.47)}L${n} ${y(0.53)}V${y(0.6)}L${r} ${y(0.66)}` +
    `V${y(0.72)}H${foot}V${height}Z`;
  return [
    shape(outline, across('alu'), 'alu-d', 2.4, ROUND_JOIN),
    bar(-n, y(0.565), n, y(0.565), 'alu-c', 3.4, 0.8),
    bar(-foot + 4, y(0.74), foot * 0.3, y(0.74), 'alu-h', 2, 0.85),
    bar(-r + 4, y(0.22), r * 0.2, y(0.22), 'alu-h', 1.8, 0.7),
  ];
}

const tube = (width: number, y: number): Drawing => [
  fill(roundRect(-690, y + width * 0.7, 1400, width * 0.5, 9), 'shadow', 0.3),
  shape(roundRect(-700, y, 1400, width, 4), down('alu'), 'alu-d', 2.4),
  bar(-700, y + width * 0.22, 700, y + width * 0.22, 'alu-h', Math.max(2, width * 0.06), 0.7),
];

/** Rule over the ring. */
function measure(bore: BoreMm, d: number): Drawing {
  const [r, y] = [d / 2, -26];
  return [
    bar(-r, y, r, y, 'alu-h', 2.4),
    ...[-r, r].map((x) => bar(x, y - 9, x, y + 18, 'alu-h', 2.4)),
    text(`${bore} mm`, 0, y - 16, 26, 'alu-h'),
  ];
}

function cap(bore: BoreMm, look: CapLook, d: number, height: number): Drawing {
  const w = d * 1.5;
  const h = height + 2;
  const swapped = look === 'swapped';
  const worn = swapped ? otherBore(bore) : bore;
  const square = look !== 'blank' && letterOf(worn) === 'H';
  const outline = roundRect(-w / 2, -16, w, h, square ? 7 : 15);
  return [
    ...shadow(outline, 22),
    shape(outline, across('plas'), 'plas-d', 2.4),
    fill(roundRect(-w / 2 + 4, -13, w - 8, 13, square ? 5 : 9), 'plas-a', 0.6),
    ...repeat(9, (i) => {
      const x = -w * 0.42 + (i * w * 0.84) / 8;
      return bar(x, 14, x, h - 28, 'plas-h', 2.2, 0.5);
    }),
    bar(-w / 2 + 3, h - 22, w / 2 - 3, h - 22, 'plas-d', 2, 0.8),
    ...(look === 'letter' || swapped ? letter(letterOf(worn), 0, height * 0.4, 44, 'alu-b') : []),
  ];
}

/** A strap from a ring round the foot: up to its cap, or down to one that hangs beside the fitting. */
function strapSide(d: number, height: number, hangs: boolean): Drawing {
  const x = d / 2 + 17;
  const y = height - 7;
  const d2 = hangs
    ? `M${mm(x)} ${y}C${mm(x + 40)} ${y - 20} ${mm(x + 74)} ${y - 30} ${mm(x + 92)} ${y - 4}`
    : `M${mm(x)} ${y}C${mm(x + 46)} ${y - 6} ${mm(x + 40)} ${y - 84} ${mm(d * 0.75 - 2)} ${y - 76}`;
  const band = roundRect(-x, y - 6, 2 * x, 12, 5);
  return [
    ...lineShadow(d2, 8, 16),
    stroke(d2, 'rub-d', 10, 1, ROUND),
    stroke(d2, 'rub-h', 3.4, 0.9, ROUND),
    shape(band, down('rub'), 'rub-d', 1.6),
    ...(hangs ? hangingCap(x + 92, y + 26, d) : []),
  ];
}

function hangingCap(x: number, y: number, d: number): Drawing {
  const [w, h] = [d * 1.2, 62];
  return placed(
    [
      ...shadow(roundRect(x - w / 2, y - 34, w, h, 12), 14),
      shape(roundRect(x - w / 2, y - 34, w, h, 12), across('plas'), 'plas-d', 2.2),
      ...repeat(6, (i) =>
        bar(x - w * 0.36 + i * w * 0.144, y - 16, x - w * 0.36 + i * w * 0.144, y + 20, 'plas-h', 2, 0.5),
      ),
    ],
    turn(24, x, y - 34),
  );
}
