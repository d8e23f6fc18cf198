/**
 * A coupler off its port, as it lies on the mat: knob out, sleeve down; a round window shows its mouth from below, as wide
 * as the fitting it goes over, with a rule over it, with the balls that would hold it and the pin drawn back.
 */
import type { BoreMm, RectMm } from '../../layout/layout';
import type { CoupledHoseFrame } from '../bayFrame';
import { HOSE_INK } from '../drawing/badge';
import { couplerForm, couplerSide } from '../drawing/gear/coupler';
import { chain, move, scale } from '../drawing/matrix';
import { across, dome } from '../drawing/paints';
import { circle } from '../drawing/paths';
import { bar, type Drawing, fill, placed, repeat, shape, stroke, text } from '../drawing/record';
import { backdrop, type CloseView } from './closeView';

const BOX: RectMm = [-190, -150, 400, 256];
const SIZE = 1.3;
const WINDOW = [124, 24] as const;
const WINDOW_R = 70;
/** Of the window, for a millimetre of the fitting. */
const PER_MM = 1.9;
const BALLS = 6;

/** `bore` is absent where the coupler screws on. */
export function looseCouplerView({ id, bore }: CoupledHoseFrame): CloseView {
  return {
    drawing: [
      ...backdrop(BOX),
      ...placed(couplerSide(couplerForm(id), 0), chain(move(-86, 6), scale(SIZE))),
      bar(-86, 86, WINDOW[0] - 50, WINDOW[1] + 50, 'alu-a', 2.4, 0.9),
      fill(circle(WINDOW[0] + 5, WINDOW[1] + 6, WINDOW_R), 'shadow', 0.3),
      shape(circle(WINDOW[0], WINDOW[1], WINDOW_R), 'floor-d', 'alu-a', 3),
      ...placed([...mouth(bore, HOSE_INK[id]), ...measure(bore)], move(...WINDOW)),
    ],
    box: BOX,
  };
}

/** Rule over the mouth, as over a bare fitting. */
function measure(bore: BoreMm | undefined): Drawing {
  if (bore === undefined) return [];
  const [r, y] = [bore * PER_MM, -WINDOW_R - 14];
  return [
    bar(-r, y, r, y, 'alu-h', 2.4),
    ...[-r, r].map((x) => bar(x, y - 9, x, y + 12, 'alu-h', 2.4)),
    text(`${bore} mm`, 0, y - 16, 26, 'alu-h'),
  ];
}

/** Sleeve with its coloured band, wall, the hole with its balls, the pin in the middle. */
function mouth(bore: BoreMm | undefined, ink: string): Drawing {
  const r = (bore ?? 10) * PER_MM;
  const balls = repeat(BALLS, (i): Drawing => {
    const angle = (2 * Math.PI * i) / BALLS;
    return [
      shape(circle(Math.cos(angle) * (r + 1), Math.sin(angle) * (r + 1), 4.6), dome('zinc'), 'zinc-d', 1.2),
    ];
  });
  return [
    shape(circle(0, 0, r + 26), across('mill'), 'mill-d', 2),
    stroke(circle(0, 0, r + 20), ink, 6),
    shape(circle(0, 0, r + 12), across('alu'), 'alu-d', 1.8),
    shape(circle(0, 0, r), 'iron-d', 'alu-d', 1.6),
    ...(bore === undefined ? threads(r) : balls),
    shape(circle(0, 0, 6), dome('cast'), 'iron-d', 1.4),
  ];
}

const threads = (r: number): Drawing =>
  [0.94, 0.84, 0.74].map((share) => stroke(circle(0, 0, r * share), 'mill-b', 1.4, 0.8));
