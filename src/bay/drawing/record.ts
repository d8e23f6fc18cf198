/**
 * Draw records: what a drawing is before anybody paints it. Pure data in millimetres, so the same part, state and seed
 * give the same records on every machine; colours are names of palette tokens, resolved per theme by the painter.
 */
import { type Matrix, multiply } from './matrix';
import type { Paint } from './paints';

export interface StrokeStyle {
  readonly cap?: 'round' | 'butt';
  readonly join?: 'round' | 'miter';
  readonly dash?: readonly number[];
}

export interface PathRecord {
  /** Path in SVG notation. */
  readonly d: string;
  readonly fill?: Paint;
  readonly fillAlpha?: number;
  readonly evenOdd?: boolean;
  readonly ink?: string;
  readonly width?: number;
  readonly inkAlpha?: number;
  readonly style?: StrokeStyle;
  readonly matrix?: Matrix;
}

export interface TextRecord {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight: number;
  readonly ink: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly matrix?: Matrix;
}

export type DrawRecord = PathRecord | TextRecord;
export type Drawing = readonly DrawRecord[];

export const fill = (d: string, paint: Paint, fillAlpha = 1): PathRecord => ({ d, fill: paint, fillAlpha });

export const stroke = (
  d: string,
  ink: string,
  width: number,
  inkAlpha = 1,
  style: StrokeStyle = {},
): PathRecord => ({
  d,
  ink,
  width,
  inkAlpha,
  style,
});

export const ROUND: StrokeStyle = { cap: 'round' };
export const ROUND_JOIN: StrokeStyle = { join: 'round' };

/** A filled shape with its edge. */
export const shape = (
  d: string,
  paint: Paint,
  ink: string,
  width: number,
  style: StrokeStyle = {},
): PathRecord => ({
  d,
  fill: paint,
  fillAlpha: 1,
  ink,
  width,
  inkAlpha: 1,
  style,
});

/** A straight stroke with round ends. */
export const bar = (
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  ink: string,
  width: number,
  alpha = 1,
): PathRecord => stroke(`M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}`, ink, width, alpha, ROUND);

export const text = (
  words: string,
  x: number,
  y: number,
  size: number,
  ink: string,
  weight = 700,
  anchor: TextRecord['anchor'] = 'middle',
): TextRecord => ({ text: words, x, y, size, weight, ink, anchor });

/** A drawing moved, turned or scaled as a whole. */
export const placed = (drawing: Drawing, matrix: Matrix): Drawing =>
  drawing.map((record) => ({ ...record, matrix: record.matrix ? multiply(matrix, record.matrix) : matrix }));

/** Results of `draw(0)` to `draw(count - 1)`, one after the other. */
export const repeat = (count: number, draw: (i: number) => DrawRecord | Drawing): Drawing =>
  Array.from({ length: Math.max(0, Math.floor(count)) }, (_, i) => draw(i)).flat();

/** Tenths of a millimetre: finer than any screen shows, and short in the path. */
export const mm = (value: number): number => Math.round(value * 10) / 10;
