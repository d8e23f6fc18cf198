/**
 * Inks written down as numbers, to be put on a canvas elsewhere (`replay`): an operation's number, then what it takes.
 * Colours stand in a table that only grows; those that are new since the last picture go along with it.
 */
import type { Inks } from './inks';

/** How many numbers each operation takes. */
export const TAKES = {
  at: 6,
  alpha: 1,
  colour: 1,
  line: 3,
  begin: 0,
  moveTo: 2,
  lineTo: 2,
  quadraticTo: 4,
  closed: 0,
  circle: 3,
  roundRect: 5,
  fill: 0,
  stroke: 0,
  stamp: 5,
} as const satisfies Readonly<Record<keyof Inks, number>>;

/** An operation's number is its place here. */
export const OPERATIONS = Object.keys(TAKES) as readonly (keyof Inks)[];
export const CAPS: readonly CanvasLineCap[] = ['butt', 'round', 'square'];
export const JOINS: readonly CanvasLineJoin[] = ['bevel', 'miter', 'round'];

export type Numbers = Float32Array<ArrayBuffer>;

export interface InkedPicture {
  readonly numbers: Numbers;
  /** How many of them count. */
  readonly length: number;
  readonly newColours: readonly string[];
}

export interface InkList extends Inks {
  /** What was told since the last time; the list begins anew. */
  taken(): InkedPicture;
  /** Room that is used again. */
  giveBack(numbers: Numbers): void;
}

const ROOM = 4096;
const numberOf = Object.fromEntries(OPERATIONS.map((name, i) => [name, i])) as Record<keyof Inks, number>;

export function createInkList(): InkList {
  const spare: Numbers[] = [];
  const colours = new Map<string, number>();
  let newColours: string[] = [];
  let numbers: Numbers = new Float32Array(ROOM);
  let used = 0;

  const room = (more: number): void => {
    if (used + more <= numbers.length) return;
    const wider = new Float32Array(2 * numbers.length);
    wider.set(numbers);
    numbers = wider;
  };
  const put0 = (operation: number): void => {
    room(1);
    numbers[used++] = operation;
  };
  const put = (operation: number, ...rest: readonly number[]): void => {
    room(1 + rest.length);
    numbers[used++] = operation;
    for (const value of rest) numbers[used++] = value;
  };
  const place = (operation: number, x: number, y: number): void => {
    room(3);
    numbers[used] = operation;
    numbers[used + 1] = x;
    numbers[used + 2] = y;
    used += 3;
  };
  const colourNumber = (hex: string): number => {
    const known = colours.get(hex);
    if (known !== undefined) return known;
    colours.set(hex, colours.size);
    newColours.push(hex);
    return colours.size - 1;
  };
  return {
    at: (a, b, c, d, tx, ty) => put(numberOf.at, a, b, c, d, tx, ty),
    alpha: (share) => put(numberOf.alpha, share),
    colour: (hex) => put(numberOf.colour, colourNumber(hex)),
    line: (width, cap, join) => put(numberOf.line, width, CAPS.indexOf(cap), JOINS.indexOf(join)),
    begin: () => put0(numberOf.begin),
    moveTo: (x, y) => place(numberOf.moveTo, x, y),
    lineTo: (x, y) => place(numberOf.lineTo, x, y),
    quadraticTo: (aboutX, aboutY, x, y) => put(numberOf.quadraticTo, aboutX, aboutY, x, y),
    closed: () => put0(numberOf.closed),
    circle: (x, y, radius) => put(numberOf.circle, x, y, radius),
    roundRect: (x, y, width, height, radius) => put(numberOf.roundRect, x, y, width, height, radius),
    fill: () => put0(numberOf.fill),
    stroke: () => put0(numberOf.stroke),
    stamp: (picture, x, y, width, height) => put(numberOf.stamp, picture, x, y, width, height),
    taken() {
      const picture: InkedPicture = { numbers, length: used, newColours };
      numbers = spare.pop() ?? new Float32Array(numbers.length);
      used = 0;
      newColours = [];
      return picture;
    },
    giveBack(back) {
      spare.push(back);
    },
  };
}
