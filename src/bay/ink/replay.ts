/** Puts on a canvas what an ink list wrote down. */
import type { Ink2D } from '../drawing/painter';
import { CAPS, JOINS, OPERATIONS, TAKES } from './inkList';
import type { Inks } from './inks';

/** `at` is where an operation's own numbers begin. */
type Step = (ink: Ink2D, n: Float32Array, at: number, colours: readonly string[], pictures: Pictures) => void;
export type Pictures = ReadonlyMap<number, CanvasImageSource>;

const STEPS: Readonly<Record<keyof Inks, Step>> = {
  at: (ink, n, at) => ink.setTransform(n[at], n[at + 1], n[at + 2], n[at + 3], n[at + 4], n[at + 5]),
  alpha(ink, n, at) {
    ink.globalAlpha = n[at];
  },
  colour(ink, n, at, colours) {
    ink.fillStyle = ink.strokeStyle = colours[n[at]];
  },
  line(ink, n, at) {
    ink.lineWidth = n[at];
    ink.lineCap = CAPS[n[at + 1]];
    ink.lineJoin = JOINS[n[at + 2]];
  },
  begin: (ink) => ink.beginPath(),
  moveTo: (ink, n, at) => ink.moveTo(n[at], n[at + 1]),
  lineTo: (ink, n, at) => ink.lineTo(n[at], n[at + 1]),
  quadraticTo: (ink, n, at) => ink.quadraticCurveTo(n[at], n[at + 1], n[at + 2], n[at + 3]),
  closed: (ink) => ink.closePath(),
  circle(ink, n, at) {
    ink.moveTo(n[at] + n[at + 2], n[at + 1]);
    ink.arc(n[at], n[at + 1], n[at + 2], 0, 2 * Math.PI);
  },
  roundRect: (ink, n, at) => ink.roundRect(n[at], n[at + 1], n[at + 2], n[at + 3], n[at + 4]),
  fill: (ink) => ink.fill(),
  stroke: (ink) => ink.stroke(),
  stamp(ink, n, at, _, pictures) {
    const picture = pictures.get(n[at]);
    if (picture) ink.drawImage(picture, n[at + 1], n[at + 2], n[at + 3], n[at + 4]);
  },
};
const IN_ORDER = OPERATIONS.map((name) => ({ step: STEPS[name], takes: TAKES[name] }));

/** `length` numbers count; `pictures` by their number, what is not there is not stamped. */
export function replay(
  ink: Ink2D,
  numbers: Float32Array,
  length: number,
  colours: readonly string[],
  pictures: Pictures,
): void {
  for (let at = 0; at < length; ) {
    const { step, takes } = IN_ORDER[numbers[at]];
    step(ink, numbers, at + 1, colours, pictures);
    at += 1 + takes;
  }
}
