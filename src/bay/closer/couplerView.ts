/**
 * A coupler on its port from the side: snapped on, its knob still out and the pin short of the valve core; or opened, the
 * knob turned in and the pin on the core. A round window shows pin and core.
 */
import type { BoreMm, RectMm } from '../../layout/layout';
import type { CoupledHoseFrame } from '../bayFrame';
import { HOSE_INK } from '../drawing/badge';
import { couplerForm, couplerUpright } from '../drawing/gear/coupler';
import { chain, move, scale } from '../drawing/matrix';
import { across, down } from '../drawing/paints';
import { circle, roundRect } from '../drawing/paths';
import { bar, type Drawing, fill, placed, ROUND, ROUND_JOIN, shape, stroke } from '../drawing/record';
import { lineShadow } from '../drawing/solids';
import { tube } from '../drawing/tubes';
import { backdrop, type CloseView } from './closeView';

const BOX: RectMm = [-190, -150, 400, 256];
const SIZE = 1.2;
/** Middle of the window. */
const WINDOW = [128, 24] as const;
const WINDOW_R = 56;

export function couplerView(hose: CoupledHoseFrame, bore: BoreMm): CloseView {
  const form = couplerForm(hose.id);
  return {
    drawing: [
      ...backdrop(BOX),
      ...pipeBelow(),
      ...hoseAway(HOSE_INK[hose.id]),
      ...placed(couplerUpright(form, hose.open), chain(move(-70, -18), scale(SIZE))),
      ...foot(bore),
      ...window(bore, hose.open),
    ],
    box: BOX,
  };
}

const pipeBelow = (): Drawing => [shape(roundRect(-700, 86, 1400, 24, 4), down('alu'), 'alu-d', 2.2)];

/** The fitting's foot, out of the coupler's mouth. */
function foot(bore: BoreMm): Drawing {
  const r = bore * 1.1;
  return [
    shape(roundRect(-70 - r * 0.84, 46, r * 1.68, 30, 3), across('alu'), 'alu-d', 2),
    shape(roundRect(-70 - r - 12, 70, 2 * r + 24, 24, 5), across('mill'), 'mill-d', 2),
  ];
}

/** From the barb up and out of the picture. */
function hoseAway(ink: string): Drawing {
  const d = 'M2 -45C60 -45 96 -66 128 -100S190 -160 240 -190';
  return [
    ...lineShadow(d, 25, 20),
    stroke(d, `${ink}-d`, 28, 1, ROUND),
    stroke(d, ink, 24, 1, ROUND),
    { ...stroke(d, `${ink}-d`, 9, 0.45, ROUND), matrix: move(4.4, 4.4) },
    { ...stroke(d, `${ink}-a`, 7, 0.95, ROUND), matrix: move(-4, -4) },
    ...tube('M-36 -45H6', 25, 'mill'),
    ...[-22, -10, 2].map((x) => bar(x, -56, x, -34, 'mill-d', 2, 0.6)),
  ];
}

function window(bore: BoreMm, open: boolean): Drawing {
  return [
    bar(-44, 38, WINDOW[0] - WINDOW_R, WINDOW[1], 'alu-a', 2.4, 0.9),
    fill(circle(WINDOW[0] + 5, WINDOW[1] + 6, WINDOW_R), 'shadow', 0.3),
    shape(circle(WINDOW[0], WINDOW[1], WINDOW_R), 'floor-d', 'alu-a', 3),
    ...placed(cutaway(bore, open), move(...WINDOW)),
  ];
}

/** Walls of sleeve and port, the core on its spring, the pin over it. */
function cutaway(bore: BoreMm, open: boolean): Drawing {
  const d = 17 + bore * 0.8;
  const pinEnd = open ? -2 : -16;
  const core = open ? 8 : 0;
  const wall = (side: 1 | -1): string => `M${side * (d + 9)} -40V6H${side * (d - 2)}V-22H${side * 9}V-44Z`;
  const throat = (side: 1 | -1): string => `M${side * d} 2H${side * 10}V44H${side * (d - 6)}Z`;
  return [
    ...([1, -1] as const).map((side) => shape(wall(side), across('mill'), 'mill-d', 1.6, ROUND_JOIN)),
    ...([1, -1] as const).map((side) => shape(throat(side), across('alu'), 'alu-d', 1.6, ROUND_JOIN)),
    shape(roundRect(-4, -44, 8, pinEnd + 44, 2), across('cast'), 'iron-d', 1.2),
    shape(roundRect(-8, core, 16, 7, 2), across('zinc'), 'zinc-d', 1.4),
    stroke(`M0 ${core + 7}l-5 5l10 5l-10 5l10 5l-5 4`, 'zinc-a', 2.2),
    ...(open ? streams() : []),
  ];
}

/** Gas goes by the pressed core. */
const streams = (): Drawing => [
  ...[-8, 8].map((x) => stroke(`M${x} 42V0`, 'dew', 2.6, 1, { cap: 'round', dash: [5, 4] })),
  stroke('M-13 -4l5 -8l5 8M3 -4l5 -8l5 8', 'dew', 2.4, 1, { cap: 'round', join: 'round' }),
];
