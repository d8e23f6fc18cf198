/**
 * A small can with its tap, in side view, because its tilt is the can's tilt. The frost on its wall ends where the
 * liquid inside does. A dial beside it shows the tilt as a picture and its degrees as a number.
 */

import { grain } from '../grain';
import { chain, move, scale, turn } from '../matrix';
import { across, CAN_WALL, down, gearAcross } from '../paints';
import { circle, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, placed, ROUND, shape, stroke, text } from '../record';
import { frostSpike } from './frost';

export const CAN_SCALE = 0.82;
const W = 72;
const H = 128;

/** Where the charging hose leaves the tap, in the can's own frame before tilt and scale. */
const OUTLET = [38, -93] as const;

/** The can about its own middle. */
export function canDrawing(
  label: string,
  tiltDeg: number,
  valveSixteenths: number,
  frostLevel: number | null,
): Drawing {
  return placed(
    [
      ...shadowOf(tiltDeg),
      ...wall(),
      ...(frostLevel === null ? [] : frost(frostLevel, tiltDeg)),
      ...print(label),
      ...tap(valveSixteenths),
    ],
    chain(turn(tiltDeg), scale(CAN_SCALE)),
  );
}

/** Outlet of the tap from the can's middle, once tilted and scaled. */
export function canOutlet(tiltDeg: number): readonly [number, number] {
  const angle = (tiltDeg * Math.PI) / 180;
  const [x, y] = [OUTLET[0] * CAN_SCALE, OUTLET[1] * CAN_SCALE];
  return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
}

function shadowOf(tiltDeg: number): Drawing {
  const angle = (tiltDeg * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    {
      ...fill(roundRect(-W / 2, -H / 2, W, H, 14), 'shadow', 0.3),
      matrix: move(mm(12 * (c + s)), mm(12 * (c - s))),
    },
  ];
}

const wall = (): Drawing => [
  shape(roundRect(-W / 2, -H / 2, W, H, 14), CAN_WALL, 'mill-d', 2.4),
  fill(roundRect(-W / 2, -H / 2 + 20, W, H - 40, 0), 'paper-label'),
  fill(roundRect(-W / 2, -H / 2 + 20, W * 0.3, H - 40, 0), 'white', 0.45),
  fill(roundRect(W * 0.22, -H / 2 + 20, W * 0.28, H - 40, 0), 'shadow', 0.16),
  stroke(roundRect(-W / 2, -H / 2 + 20, W, H - 40, 0), 'mill-d', 1.4, 0.6),
  shape(
    `M${-W / 2 + 10} ${-H / 2}Q${-W / 2 + 14} ${-H / 2 - 14} -16 ${-H / 2 - 16}H16Q${W / 2 - 14} ${-H / 2 - 14} ${W / 2 - 10} ${-H / 2}Z`,
    CAN_WALL,
    'mill-d',
    2,
  ),
];

/** A long name is printed smaller: letters of this face are some six tenths as wide as they are high. */
const print = (label: string): Drawing => [
  fill(roundRect(-W / 2, -H / 2 + 20, W, 15, 0), 'paper-head'),
  text(label, 0, 4, Math.min(21, (W - 6) / (0.6 * label.length)), 'paper-ink'),
];

/** Tap and its handle; the handle narrows as it is turned, a quarter turn away at eight sixteenths. */
function tap(valveSixteenths: number): Drawing {
  const half = 32 * (0.55 + 0.45 * Math.abs(Math.cos((valveSixteenths / 16) * Math.PI)));
  const lift = (valveSixteenths / 16) * 8;
  return [
    shape(roundRect(-17, -H / 2 - 46, 34, 34, 5), across('mill'), 'mill-d', 2),
    fill(roundRect(-5, -H / 2 - 52 - lift, 10, 10 + lift, 1), 'mill-c'),
    shape(roundRect(-half, -H / 2 - 62 - lift, half * 2, 15, 7.5), gearAcross('chg'), 'chg-d', 2),
    shape(roundRect(14, -H / 2 - 38, 26, 18, 4), down('mill'), 'mill-d', 2),
  ];
}

/** Crystals on the wall where liquid wets it: the lowest share of the can as it stands, lies or hangs. */
function frost(level: number, tiltDeg: number): Drawing {
  const { x, y, w, h, up } = wetted(Math.max(0, Math.min(1, level)), tiltDeg);
  const random = grain(9);
  let crystals = '';
  for (let i = 0; i < 90; i++)
    crystals += frostSpike(
      x + 4 + random() * (w - 8),
      y + random() * h,
      random() * 6.28,
      4 + random() * 6,
      2,
    );
  const lying = w < W;
  let rim = '';
  for (let i = 0; i < 22; i++) {
    const along = random();
    const [rx, ry] = lying ? [x, y + 3 + along * (h - 6)] : [x + 3 + along * (w - 6), up > 0 ? y + h : y];
    rim += frostSpike(rx, ry, (lying ? Math.PI : (up * Math.PI) / 2) + (random() - 0.5), 4 + random() * 5, 1);
  }
  return [
    fill(roundRect(x, y, w, h, 12), 'frost', 0.5),
    stroke(crystals, 'frost-d', 1, 0.5, ROUND),
    stroke(crystals, 'frost', 1.2, 0.8, ROUND),
    stroke(rim, 'frost-d', 2.4, 0.5, ROUND),
    stroke(rim, 'frost', 1.3, 1, ROUND),
  ];
}

/** The wetted part of the wall in the can's own frame; `up` is where its surface lies: -1 above, 1 below (inverted). */
function wetted(
  level: number,
  tiltDeg: number,
): { readonly x: number; readonly y: number; readonly w: number; readonly h: number; readonly up: 1 | -1 } {
  if (tiltDeg > 60 && tiltDeg < 120) return { x: W / 2 - W * level, y: -H / 2, w: W * level, h: H, up: -1 };
  if (tiltDeg <= 60) return { x: -W / 2, y: H / 2 - H * level, w: W, h: H * level, up: -1 };
  return { x: -W / 2, y: -H / 2, w: W, h: H * level, up: 1 };
}

/** Tilt dial at the origin: the can as a small sign, its degrees below. */
export function tiltDial(tiltDeg: number): Drawing {
  const sign: Drawing = [
    shape(roundRect(-11, -20, 22, 34, 4), 'can-b', 'ink', 2),
    shape(roundRect(-5, -29, 10, 9, 2), 'ink', 'ink', 1),
  ];
  return [
    shape(circle(0, 0, 34), 'card', 'ink', 2),
    bar(-34, 0, -28, 0, 'ink', 2),
    bar(28, 0, 34, 0, 'ink', 2),
    bar(0, -34, 0, -29, 'ink', 2),
    ...placed(sign, turn(tiltDeg)),
    shape(roundRect(-27, 36, 54, 26, 6), 'card', 'ink', 1.6),
    text(`${tiltDeg}°`, 0, 55, 18, 'ink'),
  ];
}

/** The scale's plate under a can, read-out in its front edge. */
export const scalePlate = (readout: string | null): Drawing => [
  fill(roundRect(-62, 54, 136, 44, 10), 'shadow', 0.28),
  shape(roundRect(-66, 46, 132, 18, 6), down('mill'), 'mill-d', 2),
  shape(roundRect(-66, 60, 132, 36, 8), down('plas'), 'plas-d', 2),
  shape(roundRect(-42, 66, 84, 24, 4), 'paper', 'plas-d', 1.4),
  ...(readout === null ? [] : [text(readout, 0, 84, 18, 'paper-ink')]),
];
