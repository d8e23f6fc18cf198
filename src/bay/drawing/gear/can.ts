/**
 * A small can with its tap, in side view, because its tilt is the can's tilt. The frost on its wall ends where the
 * liquid inside does. A dial beside it shows the tilt as a picture and its degrees as a number.
 */

import { grain } from '../grain';
import { chain, move, scale, turn } from '../matrix';
import { across, CAN_WALL, down, gearAcross } from '../paints';
import { circle, polygon, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, placed, ROUND, shape, stroke, text } from '../record';
import { frostSpike } from './frost';
import { wetted } from './wetted';

export const CAN_SCALE = 0.82;
const W = 72;
const H = 128;
/** Of its body, upright and as it is drawn. */
export const CAN_SIZE = { w: W * CAN_SCALE, h: H * CAN_SCALE } as const;
/** Of its wall's corners. */
const WALL_R = 14;

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
      ...fill(roundRect(-W / 2, -H / 2, W, H, WALL_R), 'shadow', 0.3),
      matrix: move(mm(12 * (c + s)), mm(12 * (c - s))),
    },
  ];
}

const wall = (): Drawing => [
  shape(roundRect(-W / 2, -H / 2, W, H, WALL_R), CAN_WALL, 'mill-d', 2.4),
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

/** Crystals on the wall where liquid wets it, thickest along its surface, which stays level however the can is held. */
function frost(level: number, tiltDeg: number): Drawing {
  const wet = wetted(W, H, WALL_R, level, tiltDeg);
  if (wet.outline.length < 3) return [];
  const random = grain(9);
  let crystals = '';
  for (let i = 0; i < 150; i++) {
    const [x, y] = [(random() - 0.5) * (W - 8), (random() - 0.5) * (H - 8)];
    const spike = frostSpike(x, y, random() * 6.28, 4 + random() * 6, 2);
    if (wet.contains(x, y)) crystals += spike;
  }
  const [[ax, ay], [bx, by]] = wet.surface;
  const up = Math.atan2(wet.up[1], wet.up[0]);
  let rim = '';
  for (let i = 0; i < 26; i++) {
    const share = 0.04 + random() * 0.92;
    rim += frostSpike(
      ax + (bx - ax) * share,
      ay + (by - ay) * share,
      up + (random() - 0.5),
      4 + random() * 5,
      1,
    );
  }
  return [
    fill(polygon(wet.outline.map(([x, y]) => [mm(x), mm(y)] as const)), 'frost', 0.5),
    stroke(crystals, 'frost-d', 1, 0.5, ROUND),
    stroke(crystals, 'frost', 1.2, 0.8, ROUND),
    bar(mm(ax), mm(ay), mm(bx), mm(by), 'frost-d', 2.2, 0.75),
    stroke(rim, 'frost-d', 2.4, 0.5, ROUND),
    stroke(rim, 'frost', 1.3, 1, ROUND),
  ].filter((record) => record.d !== '');
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
