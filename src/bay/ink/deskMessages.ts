/** What a paint desk is told, by message or directly: pictures to keep by number, pictures of the scene to show. */
import type { Matrix } from '../drawing/matrix';
import type { Palette } from '../drawing/palette';
import type { Drawing } from '../drawing/record';
import type { InkedPicture, Numbers } from './inkList';

/** A rectangle of device pixels. */
export interface Pixels {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Drawings to be painted one over the other, once, and kept. */
export interface PictureOrder {
  /** Device pixels. */
  readonly width: number;
  readonly height: number;
  /** What it is filled with first: then nothing is seen through it, and it is copied faster. */
  readonly ground: string | null;
  readonly palette: Palette;
  readonly layers: readonly {
    readonly drawing: Drawing;
    /** From its millimetres to device pixels. */
    readonly matrix: Matrix;
    /** Left free by this layer. */
    readonly but?: Pixels;
  }[];
}

export type DeskMessage =
  | { readonly do: 'keep'; readonly picture: number; readonly order: PictureOrder }
  | { readonly do: 'drop'; readonly picture: number }
  /** On a canvas of so many device pixels. */
  | { readonly do: 'show'; readonly width: number; readonly height: number; readonly inked: InkedPicture };

/** To a worker, first of all. */
export interface CanvasMessage {
  readonly do: 'canvas';
  readonly canvas: OffscreenCanvas;
}

export type FromDesk =
  /** Whether it can paint at all. */
  | { readonly type: 'ready'; readonly able: boolean }
  | { readonly type: 'painted'; readonly numbers: Numbers };
