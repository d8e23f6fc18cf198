/**
 * Drawings as a page fetches them: short, because outlines are most of what a drawing weighs. `packed` of the build makes
 * them, `unpacked` reads them back; what comes out is what the part file says.
 */
import type { PointMm } from '../../../layout/layout';
import type { Matrix } from '../matrix';
import type { Gradient } from '../paints';
import { ellipse, roundRect } from '../paths';
import type { Drawing, DrawRecord, StrokeStyle, TextRecord } from '../record';
import { shadow } from '../solids';
import type { PartFile, Piece } from './partFile';

export interface PackedBundle {
  readonly gradients: readonly Gradient[];
  readonly drawings: Readonly<Record<string, PackedPart>>;
}

interface PackedPart {
  readonly meta: PartFile['meta'];
  readonly groups: Readonly<Record<string, readonly PackedPiece[]>>;
}

/** A text as it is; an outline with its shadow's elevation; an outline with its paint; what keeps its shape. */
export type PackedPiece = TextRecord | PackedShadow | PackedPath | PackedHeld;
export type PackedShadow = readonly [outline: string, elevation: readonly [number]];
export type PackedHeld = readonly [at: PointMm, holds: readonly PackedPiece[]];
/** A fill is a token, or the number of a gradient; '' is none. What is left off at the end is as in `LEFT_OFF`. */
export type PackedPath = readonly [
  outline: string,
  fill?: string | number,
  ink?: string,
  width?: number,
  fillAlpha?: number,
  inkAlpha?: number,
  style?: number,
  matrix?: Matrix | 0,
  evenOdd?: number,
];

export const LEFT_OFF = ['', '', '', 0, 1, 1, 0, 0, 0] as const;
/** Bits of a style. */
export const ROUND_CAP = 1;
export const ROUND_JOIN = 2;

/** `O x y rx ry` is an ellipse, `R x y w h r` a rectangle with round corners; anything else is a path. */
export function outlineOf(short: string): string {
  const n = short.slice(1).split(' ').map(Number);
  if (short[0] === 'O') return ellipse(n[0], n[1], n[2], n[3] ?? n[2]);
  return short[0] === 'R' ? roundRect(n[0], n[1], n[2], n[3], n[4]) : short;
}

export function unpacked({ gradients, drawings }: PackedBundle): Map<string, PartFile> {
  const recordsOf = (piece: PackedPiece): Drawing => {
    if ('text' in piece) return [piece];
    const [outline, second] = piece;
    if (typeof outline !== 'string') return [];
    if (Array.isArray(second)) return shadow(outlineOf(outline), second[0]);
    return [pathOf(piece as PackedPath, gradients)];
  };
  const piecesOf = (piece: PackedPiece): Piece[] => {
    if ('text' in piece || typeof piece[0] === 'string') return [...recordsOf(piece)];
    const [at, holds] = piece as PackedHeld;
    return [{ at, holds: holds.flatMap(recordsOf) }];
  };
  const groupsOf = (groups: PackedPart['groups']): PartFile['groups'] =>
    Object.fromEntries(Object.entries(groups).map(([id, pieces]) => [id, pieces.flatMap(piecesOf)]));
  return new Map(
    Object.entries(drawings).map(([name, { meta, groups }]) => [name, { meta, groups: groupsOf(groups) }]),
  );
}

function pathOf(
  [
    outline,
    fill = '',
    ink = '',
    width = 0,
    fillAlpha = 1,
    inkAlpha = 1,
    bits = 0,
    matrix = 0,
    evenOdd = 0,
  ]: PackedPath,
  gradients: readonly Gradient[],
): DrawRecord {
  const style: StrokeStyle = {
    ...(bits & ROUND_CAP ? { cap: 'round' } : {}),
    ...(bits & ROUND_JOIN ? { join: 'round' } : {}),
  };
  return {
    d: outlineOf(outline),
    ...(fill === '' ? {} : { fill: typeof fill === 'number' ? (gradients[fill] as Gradient) : fill }),
    ...(fillAlpha < 1 ? { fillAlpha } : {}),
    ...(evenOdd ? { evenOdd: true } : {}),
    ...(ink === '' ? {} : { ink, width }),
    ...(inkAlpha < 1 ? { inkAlpha } : {}),
    ...(bits ? { style } : {}),
    ...(matrix ? { matrix } : {}),
  };
}
