/**
 * A group of a part's drawing, at the part's place, in the size its layout asks for and turned as it says. A stretched
 * drawing keeps its strokes, its shadows' reach, and the shape of what it holds (bolts, caps).
 */
import type { Part } from '../../../layout/layout';
import { chain, type Matrix, move, multiply, turn } from '../matrix';
import { type Drawing, type DrawRecord, mm, placed } from '../record';
import { partFile } from './partBook';
import type { PartFile, Piece, SizeKey, Turns } from './partFile';
import { stretchedPath } from './stretchedPath';

export interface Stretch {
  readonly kx: number;
  readonly ky: number;
}

/** Given to whatever sits in a line: how far turned, and the line's diameter, which not every drawing goes by. */
const ANY: readonly string[] = ['turnDeg', 'd'];

/** The file a part wears: its kind's, or a variant of it. */
export const fileOf = (part: Part): PartFile =>
  partFile(part.drawing === undefined ? part.kind : `${part.kind}-${part.drawing}`);

/** Of the size it is drawn in. Throws `RangeError` for a size that its drawing does not have. */
export function stretchOf(part: Part): Stretch {
  const natural = fileOf(part).meta.size ?? {};
  const share = (key: SizeKey): number | undefined => {
    const [own, drawn] = [part.size?.[key], natural[key]];
    return own !== undefined && drawn !== undefined ? own / drawn : undefined;
  };
  for (const key of Object.keys(part.size ?? {})) {
    if (!ANY.includes(key) && !(key in natural))
      throw new RangeError(`part "${part.id}" (${part.kind}) has no size.${key}`);
  }
  const round = share('r');
  return { kx: round ?? share('w') ?? share('d') ?? 1, ky: round ?? share('h') ?? 1 };
}

/** Across and down, mm; 0 where its drawing knows no size. */
export function sizeDrawn(part: Part): { readonly w: number; readonly h: number } {
  const { w = 0, h = 0 } = fileOf(part).meta.size ?? {};
  const { kx, ky } = stretchOf(part);
  return { w: w * kx, h: h * ky };
}

/** What was drawn of a part, by group: it is asked for again after each change of size or theme. */
const known = new WeakMap<Part, Map<string, Drawing>>();

/** Empty where the drawing has no such group. */
export function partDrawing(part: Part, group: string): Drawing {
  const groups = known.get(part) ?? new Map<string, Drawing>();
  known.set(part, groups);
  const drawing = groups.get(group) ?? drawingOf(part, group);
  groups.set(group, drawing);
  return drawing;
}

function drawingOf(part: Part, group: string): Drawing {
  const { kx, ky } = stretchOf(part);
  const pieces = fileOf(part).groups[group] ?? [];
  const degrees = part.size?.turnDeg ?? 0;
  const place = degrees === 0 ? move(...part.at) : chain(move(...part.at), turn(degrees));
  return placed(drawn(pieces, kx, ky), place);
}

/** The disc that turns, at the part's place and in its size; null where nothing of it turns. */
export function turnsOf(part: Part): Turns | null {
  const { turns } = fileOf(part).meta;
  if (!turns) return null;
  const { kx, ky } = stretchOf(part);
  return {
    at: [part.at[0] + turns.at[0] * kx, part.at[1] + turns.at[1] * ky],
    r: turns.r * kx,
    squash: (turns.squash * ky) / kx,
  };
}

/** What turns, round about the origin, in the part's size. */
export function turningDisc(part: Part): Drawing {
  const { kx } = stretchOf(part);
  return drawn(fileOf(part).groups.turning ?? [], kx, kx);
}

/** A group of a drawing that no layout places, about the origin. */
export const looseDrawing = (name: string, group: string): Drawing =>
  drawn(partFile(name).groups[group] ?? [], 1, 1);

const drawn = (pieces: readonly Piece[], kx: number, ky: number): Drawing =>
  pieces.flatMap((piece) =>
    'holds' in piece
      ? placed(piece.holds, move(mm(piece.at[0] * kx), mm(piece.at[1] * ky)))
      : [stretched(piece, kx, ky)],
  );

function stretched(record: DrawRecord, kx: number, ky: number): DrawRecord {
  if (kx === 1 && ky === 1) return record;
  const moved = record.matrix ? { matrix: whole(record.matrix, kx, ky) } : {};
  if ('text' in record) return { ...record, x: record.x * kx, y: record.y * ky, ...moved };
  return { ...record, d: stretchedPath(record.d, kx, ky), ...moved };
}

/** A shadow's way stays as long as it was; a turned record is stretched about its own middle. */
function whole(matrix: Matrix, kx: number, ky: number): Matrix {
  const [a, b, c, d, e, f] = matrix;
  const isMove = a === 1 && b === 0 && c === 0 && d === 1;
  return isMove ? matrix : multiply([1, 0, 0, 1, e * (kx - 1), f * (ky - 1)], [a, b, c, d, e, f]);
}
