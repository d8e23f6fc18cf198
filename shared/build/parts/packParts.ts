/** Drawings packed for a page (see src/bay/drawing/parts/packed.ts): gradients in a table, outlines and shadows short. */
import type { Gradient } from '../../../src/bay/drawing/paints';
import {
  LEFT_OFF,
  outlineOf,
  type PackedBundle,
  type PackedPath,
  type PackedPiece,
  ROUND_CAP,
  ROUND_JOIN,
} from '../../../src/bay/drawing/parts/packed';
import type { PartFile, Piece } from '../../../src/bay/drawing/parts/partFile';
import type { Drawing, DrawRecord, PathRecord } from '../../../src/bay/drawing/record';
import { shadow } from '../../../src/bay/drawing/solids';

type GradientNumber = (gradient: Gradient) => number;

export function packParts(parts: readonly (readonly [name: string, part: PartFile])[]): PackedBundle {
  const gradients: Gradient[] = [];
  const numbers = new Map<string, number>();
  const numberOf: GradientNumber = (gradient) => {
    const key = JSON.stringify(gradient);
    const known = numbers.get(key) ?? gradients.push(gradient) - 1;
    numbers.set(key, known);
    return known;
  };
  const drawings = parts.map(([name, { meta, groups }]) => {
    const packed = Object.entries(groups).map(([id, pieces]) => [id, packedPieces(pieces, numberOf)]);
    return [name, { meta, groups: Object.fromEntries(packed) }];
  });
  return { gradients, drawings: Object.fromEntries(drawings) };
}

function packedPieces(pieces: readonly Piece[], numberOf: GradientNumber): PackedPiece[] {
  const packed: PackedPiece[] = [];
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i] as Piece;
    if ('holds' in piece) {
      packed.push([piece.at, packedPieces(piece.holds, numberOf)]);
      continue;
    }
    const elevation = elevationOf(pieces.slice(i, i + SHADOW_COPIES));
    if (elevation !== null) {
      packed.push([shortOutline((piece as PathRecord).d), [elevation]]);
      i += SHADOW_COPIES - 1;
    } else packed.push('text' in piece ? piece : packedPath(piece, numberOf));
  }
  return packed;
}

const SHADOW_COPIES = 3;
/** A shadow's way down is half its elevation. */
const ELEVATION_STEP_MM = 0.1;

/** The elevation of a shadow, where these are the copies it is made of. */
function elevationOf(pieces: readonly Piece[]): number | null {
  const [first, , last] = pieces as readonly [Piece?, Piece?, Piece?];
  if (!first || !last || !('d' in first) || !('d' in last) || !last.matrix) return null;
  const near = Math.round((last.matrix[5] / 0.5) * 10) / 10;
  const written = inOrder(pieces as Drawing);
  for (const step of [0, -1, 1]) {
    const elevation = Math.round((near + step * ELEVATION_STEP_MM) * 10) / 10;
    if (inOrder(shadow(first.d, elevation)) === written) return elevation;
  }
  return null;
}

const inOrder = (records: Drawing): string =>
  JSON.stringify(records.map((record) => Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1))));

function packedPath(record: DrawRecord & PathRecord, numberOf: GradientNumber): PackedPath {
  const { d, fill = '', ink = '', width = 0, fillAlpha = 1, inkAlpha = 1, style = {}, matrix = 0 } = record;
  const bits = (style.cap === 'round' ? ROUND_CAP : 0) + (style.join === 'round' ? ROUND_JOIN : 0);
  const whole: unknown[] = [
    shortOutline(d),
    typeof fill === 'string' ? fill : numberOf(fill),
    ink,
    width,
    fillAlpha,
    inkAlpha,
    bits,
    matrix,
    record.evenOdd ? 1 : 0,
  ];
  while (whole.length > 1 && whole.at(-1) === LEFT_OFF[whole.length - 1]) whole.pop();
  return whole as unknown as PackedPath;
}

const ELLIPSE = /^M(\S+) (\S+)A(\S+) (\S+) 0 1 1 (\S+) /;
const RECTANGLE = /^M(\S+) (\S+)H(\S+)A(\S+) \S+ 0 0 1 (\S+) \S+V\S+A\S+ \S+ 0 0 1 \S+ (\S+)H/;

/** Short where the short form gives the very same path. */
function shortOutline(d: string): string {
  const round = ELLIPSE.exec(d)?.slice(1).map(Number) as number[] | undefined;
  const square = RECTANGLE.exec(d)?.slice(1).map(Number) as number[] | undefined;
  const shorts = [...(round ? [ellipseOf(round)] : []), ...(square ? [rectangleOf(square)] : [])];
  return shorts.find((short) => outlineOf(short) === d) ?? d;
}

function ellipseOf([left, y, rx, ry, right]: readonly number[]): string {
  const x = tenths(((left as number) + (right as number)) / 2);
  return `O${x} ${y} ${rx}${ry === rx ? '' : ` ${ry}`}`;
}

function rectangleOf([x, y, , r, right, bottom]: readonly number[]): string {
  const left = tenths((x as number) - (r as number));
  return `R${left} ${y} ${tenths((right as number) - left)} ${tenths((bottom as number) - (y as number))} ${r}`;
}

const tenths = (value: number): number => Math.round(value * 10) / 10;
