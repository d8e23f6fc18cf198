/** The under-hood label read from near: a printed plate, a conversion's with its dashed frame, or one that is worn away. */
import type { RectMm } from '../../layout/layout';
import type { LabelPrint } from '../bayFrame';
import { move } from '../drawing/matrix';
import { polygon, roundRect } from '../drawing/paths';
import {
  bar,
  type Drawing,
  fill,
  placed,
  ROUND,
  ROUND_JOIN,
  repeat,
  shape,
  stroke,
  text,
} from '../drawing/record';
import { shadow } from '../drawing/solids';
import { backdrop, type CloseView } from './closeView';

const BOX: RectMm = [-24, -16, 368, 246];
const [W, H] = [320, 214];

/** Null where there is no label at all: then the bare beam is what there is to see. */
export function labelView(print: LabelPrint): CloseView | null {
  if (print.look === 'none') return null;
  const plate = roundRect(0, 0, W, H, 8);
  return {
    drawing: [
      ...backdrop(BOX),
      ...shadow(plate, 12),
      shape(plate, 'paper', 'resv-d', 2),
      ...(print.look === 'conversion' ? conversion(print) : printed(print)),
      ...(print.look === 'worn' ? worn() : []),
    ],
    box: BOX,
  };
}

function printed({ heading, rows, note, burns }: LabelPrint): Drawing {
  return [
    fill(`M0 44V8a8 8 0 0 1 8 -8H${W - 8}a8 8 0 0 1 8 8V44Z`, 'paper-head'),
    text(heading, 18, 30, fitted(heading, 20, W - (burns ? 90 : 36)), 'white', 700, 'start'),
    ...rows.flatMap(([name, value], i) => row(name, value, 76 + i * 31, i === 0 ? 20 : 16.5, 126)),
    text(note, 18, H - 14, fitted(note, 13, W - 36), 'paper-soft', 500, 'start'),
    ...(burns ? placed(flame(), move(W - 36, 23)) : []),
  ];
}

const row = (name: string, value: string, y: number, size: number, x: number): Drawing => [
  text(name, 18, y, fitted(name, 16, x - 24), 'paper-soft', 500, 'start'),
  ...valueLines(value, size, W - x - 12).map(([line, dy, lineSize]) =>
    text(line, x, y + dy, lineSize, 'paper-ink', 700, 'start'),
  ),
];

/** What would be printed too small goes on two lines. */
function valueLines(value: string, size: number, width: number): (readonly [string, number, number])[] {
  const whole = fitted(value, size, width);
  const middle = value.lastIndexOf(' ', Math.ceil(value.length * 0.62));
  if (whole >= LEAST_SIZE || middle < 0) return [[value, 0, whole]];
  const [first, second] = [value.slice(0, middle), value.slice(middle + 1)];
  return [
    [first, -6, fitted(first, LEAST_SIZE, width)],
    [second, 9, fitted(second, LEAST_SIZE, width)],
  ];
}

const LEAST_SIZE = 13.5;

/** Letters of this face are some six tenths as wide as they are high. */
const fitted = (words: string, size: number, width: number): number =>
  Math.min(size, width / (0.62 * Math.max(1, words.length)));

/** The sign for what burns. */
const flame = (): Drawing => [
  shape(
    polygon([
      [0, -18],
      [22, 19],
      [-22, 19],
    ]),
    'white',
    'paper-ink',
    3,
    ROUND_JOIN,
  ),
  fill('M0 15c-9 0 -11 -7 -7 -12c1 3 3 3 3 0c0 -3 2 -6 5 -9c-1 5 7 7 6 14c0 5 -3 7 -7 7z', 'paper-ink'),
];

/** Filled in by hand, signed with a stroke that is nobody's name. */
const conversion = ({ over, heading, rows, signed, note }: LabelPrint): Drawing => [
  stroke(roundRect(7, 7, W - 14, H - 14, 4), 'paper-head', 2.4, 1, { dash: [10, 6] }),
  text(over, W / 2, 38, fitted(over, 16, W - 40), 'paper-ink', 700),
  text(heading, W / 2, 74, 34, 'paper-ink', 700),
  ...rows.flatMap(([name, value], i) => row(name, value, 106 + i * 26, 15.5, 112)),
  text(signed, 18, 158, fitted(signed, 15, 88), 'paper-soft', 500, 'start'),
  stroke('M112 158c12 -16 18 4 30 -6s10 8 26 -2s20 -8 40 2', 'paper-pen', 2.4, 1, ROUND),
  bar(112, 165, W - 24, 165, 'paper-soft', 1.2),
  text(note, W / 2, H - 20, fitted(note, 13.5, W - 40), 'paper-soft', 600),
];

/** Rubbed and bleached: only that there was print is left. */
const worn = (): Drawing => [
  ...repeat(6, (i) => bar(20, 68 + i * 22, 150 + ((i * 67) % 110), 68 + i * 22, 'paper-soft', 7, 0.16)),
  fill(`M0 44L${W} 18V120L40 ${H}H0Z`, 'paper', 0.55),
  ...repeat(9, (i) =>
    bar(24 + i * 34, 52 + ((i * 41) % 90), 60 + i * 30, 84 + ((i * 53) % 90), 'paper', 5, 0.8),
  ),
];
