/**
 * Couplers. On a port they are seen from above: a round fluted knob with L or a rounded square one with H, the sleeve
 * below, the hose's barb to one side; the knob stands up while the core is shut and sinks when it is turned in. Loose
 * they lie on the mat in side view, because mouth and sleeve are the message there.
 */
import type { CoupledHose } from '../../../layout/layout';
import { badge, HOSE_INK, HOSE_LETTER, letter } from '../badge';
import { chain, move, scale, turn } from '../matrix';
import { across, down, gearAcross, gearDome } from '../paints';
import { circle, polygon, roundRect } from '../paths';
import { bar, type Drawing, fill, mm, placed, repeat, shape, stroke } from '../record';
import { canister, lineShadow, shadow } from '../solids';
import { tube } from '../tubes';

/** The two kinds of coupler there are. The charging hose wears a low-side one, whatever the colour of its hose. */
export type CouplerForm = 'low' | 'high';
export const couplerForm = (hose: CoupledHose): CouplerForm => (hose === 'high' ? 'high' : 'low');

const knobRadius = (hose: CouplerForm): number => (hose === 'low' ? 27 : 30);
/** How high the knob stands over the sleeve while it is out, and how far it goes in. */
const KNOB_OUT_MM = 17;
const KNOB_TRAVEL_MM = 11;
/** How far the hose starts from the middle of a coupler on a port. */
export const BARB_MM = 66;

/**
 * On a port at the origin, the hose leaving at `angle` (radians, clockwise from picture right). `turnedIn` is how far
 * its knob is turned in: 0 stands up and the core is shut, 1 is down on the sleeve and the core pressed.
 */
export function couplerTop(hose: CouplerForm, angle: number, turnedIn: number): Drawing {
  const r = knobRadius(hose);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const along = (k: number): readonly [number, number] => [mm(c * k), mm(2 + s * k)];
  const barb = `M${along(r * 0.5).join(' ')}L${along(r + 38).join(' ')}`;
  const ring = (share: number) => {
    const [x, y] = along(r + 40 * share);
    return bar(x - s * 10, y + c * 10, x + s * 10, y - c * 10, 'mill-d', 2, 0.7);
  };
  const stem: Drawing = turnedIn >= 1 ? [] : canister(0, -2, r * 0.5, 10, 'mill', { elevation: 6 });
  const rise = mm(-KNOB_OUT_MM + KNOB_TRAVEL_MM * turnedIn);
  return [
    ...lineShadow(barb, 22, 30),
    ...tube(barb, 22, 'mill'),
    ...[0.35, 0.6, 0.85].map(ring),
    ...canister(0, 8, r + 2, 26, 'mill', { elevation: 40 }),
    ...stem,
    ...placed(knob(hose, r), move(0, rise)),
  ];
}

function knob(hose: CouplerForm, r: number): Drawing {
  const height = 14;
  if (hose === 'low') {
    const flutes = Array.from({ length: 36 }, (_, i) => {
      const q = i % 2 ? r : r - 3.2;
      return [Math.cos((i * Math.PI) / 18) * q, Math.sin((i * Math.PI) / 18) * q] as const;
    });
    return [
      shape(polygon(flutes.map(([x, y]) => [x, y + height] as const)), 'low-d', 'low-d', 4, {
        join: 'round',
      }),
      shape(polygon(flutes), gearDome('low'), 'low-d', 2.4, { join: 'round' }),
      stroke(circle(0, 0, r * 0.74), 'low-a', 1.8, 0.7),
      ...letter(HOSE_LETTER.low, 0, 0, r * 1.06),
    ];
  }
  const half = r * 0.98;
  return [
    shape(roundRect(-half, -half, half * 2, half * 2 + height, half * 0.36), 'high-d', 'high-d', 3),
    ...[-0.72, -0.36, 0, 0.36, 0.72].map((k) =>
      bar(half * k, half + 2, half * k, half + height - 3, 'high', 2, 0.75),
    ),
    shape(roundRect(-half, -half, half * 2, half * 2, half * 0.36), gearDome('high'), 'high-d', 2.4),
    stroke(roundRect(-half * 0.76, -half * 0.76, half * 1.52, half * 1.52, half * 0.24), 'high-a', 1.8, 0.7),
    ...letter(HOSE_LETTER.high, 0, 0, r * 1.06),
  ];
}

/** Scale at which loose gear lies on the mat. */
export const MAT_SCALE = 0.86;

/** How far its handle reaches from its middle there. */
export const HANDLE_END_MM = 103 * MAT_SCALE;

/** Loose, in side view, mouth down when `turnDeg` is 0; the barb is at its right, or at its left where asked. */
export function couplerSide(hose: CouplerForm, turnDeg: number, barbLeft = false): Drawing {
  const upright = placed(sideBadge(hose), turn(-turnDeg, 0, -26));
  return placed([...sideBody(hose, barbLeft, 0, 0), ...upright], chain(turn(turnDeg), scale(MAT_SCALE)));
}

/** How far the knob of an opened coupler has gone in, and the sleeve of one that holds has gone up. */
const KNOB_IN_MM = 13;
const SLEEVE_UP_MM = 7;

/** On a port, from the side, about its own middle: the sleeve up, the knob out or turned in. */
export const couplerUpright = (hose: CouplerForm, open: boolean): Drawing => [
  ...sideBody(hose, false, open ? KNOB_IN_MM : 0, SLEEVE_UP_MM),
  ...sideBadge(hose),
];

const sideWidth = (hose: CouplerForm): number => (hose === 'low' ? 40 : 50);
const sideBadge = (hose: CouplerForm): Drawing => badge(hose, 0, -26, sideWidth(hose) * 0.3);

function sideBody(hose: CouplerForm, barbLeft: boolean, knobMm: number, sleeveMm: number): Drawing {
  const ink = HOSE_INK[hose];
  const w = sideWidth(hose);
  const mouth = hose === 'low' ? 18.6 : 22.6;
  const sleeve: Drawing = [
    shape(roundRect(-w / 2 - 3, 2, w + 6, 48, 7), across('mill'), 'mill-d', 2),
    ...[0.2, 0.4, 0.6, 0.8].map((k) => bar(-w / 2, 2 + 48 * k, w / 2, 2 + 48 * k, 'mill-d', 2, 0.5)),
    fill(roundRect(-w / 2 - 3, 17, w + 6, 12, 0), ink),
  ];
  return [
    ...shadow(roundRect(-w / 2, -70, w, 140, 8), 18),
    shape(roundRect(-7, -84, 14, 30, 3), across('mill'), 'mill-d', 1.6),
    ...placed(sideKnob(hose, w), move(0, knobMm)),
    shape(roundRect(barbLeft ? -w * 0.2 - 60 : w * 0.2, -34, 60, 24, 6), down('mill'), 'mill-d', 2),
    ...[30, 40, 50, 60]
      .map((k) => (w * 0.2 + k - 6) * (barbLeft ? -1 : 1))
      .map((x) => bar(x, -33, x, -11, 'mill-d', 2, 0.6)),
    shape(roundRect(-w * 0.42, -58, w * 0.84, 66, 7), across('mill'), 'mill-d', 2),
    ...placed(sleeve, move(0, -sleeveMm)),
    shape(roundRect(-w * 0.36, 48 - sleeveMm, w * 0.72, 14 + sleeveMm, 3), across('alu'), 'mill-d', 1.6),
    fill(roundRect(-mouth / 2, 56, mouth, 8, 2), 'iron-d'),
  ];
}

/** How far the mouth of an upright coupler is below its middle. */
export const MOUTH_MM = 62 * MAT_SCALE;

/** Where the hose starts on a loose coupler, from its own middle. */
export function barbTip(hose: CouplerForm, turnDeg: number, barbLeft = false): readonly [number, number] {
  const angle = (turnDeg * Math.PI) / 180;
  const x = ((hose === 'low' ? 40 : 50) * 0.2 + 56) * MAT_SCALE * (barbLeft ? -1 : 1);
  const y = -22 * MAT_SCALE;
  return [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)];
}

function sideKnob(hose: CouplerForm, w: number): Drawing {
  const top = -96;
  if (hose === 'high') {
    return [
      shape(roundRect(-w * 0.6, top - 7, w * 1.2, 35, 4), 'high', 'high-d', 2, { join: 'round' }),
      fill(roundRect(-w * 0.6, top - 7, w * 1.2, 9, 3), 'high-a'),
      fill(roundRect(w * 0.3, top - 6, w * 0.3, 33, 3), 'high-d', 0.6),
      bar(w * 0.3, top - 5, w * 0.3, top + 26, 'high-d', 2, 0.8),
      ...[-0.42, -0.24, -0.06, 0.12].map((k) => bar(w * k, top + 7, w * k, top + 23, 'high-d', 2.4, 0.5)),
    ];
  }
  const e = mm(w * 0.62);
  const inner = mm(w * 0.3);
  const outline =
    `M${-e} ${top + 24}V${top + 6}C${-e} ${top - 5} ${-inner} ${top - 9} 0 ${top - 9}C${inner} ${top - 9} ${e} ${top - 5} ${e} ${top + 6}` +
    `V${top + 24}Q${e} ${top + 29} 0 ${top + 29}Q${-e} ${top + 29} ${-e} ${top + 24}Z`;
  return [
    shape(outline, gearAcross('low'), 'low-d', 2),
    ...[-0.46, -0.3, -0.1, 0.1, 0.3, 0.46].map((k) =>
      bar(w * k, top + 4, w * k, top + 24, 'low-d', 2.2, 0.6),
    ),
  ];
}

/** End of a charging hose that holds no can: a knurled nut, lying on the mat. */
export const chargingEnd = (): Drawing => [
  ...shadow(roundRect(-20, -14, 40, 28, 5), 14),
  shape(roundRect(-20, -13, 38, 26, 5), down('mill'), 'mill-d', 2),
  ...repeat(4, (i) => bar(-12 + i * 8, -11, -12 + i * 8, 11, 'mill-d', 2, 0.6)),
  shape(roundRect(16, -8, 10, 16, 2), down('zinc'), 'zinc-d', 1.6),
];
