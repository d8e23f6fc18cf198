/** What a part file of assets/parts holds once it is read: its metadata, and its groups as draw records. */
import type { PointMm } from '../../../layout/layout';
import type { DrawRecord } from '../record';

/** Keeps its shape where the drawing is stretched, and moves with it. */
export interface Held {
  readonly at: PointMm;
  readonly holds: readonly DrawRecord[];
}

export type Piece = DrawRecord | Held;

export type SizeKey = 'w' | 'h' | 'r' | 'd';

/** A disc that turns: seen squashed about `at`. */
export interface Turns {
  readonly at: PointMm;
  readonly r: number;
  readonly squash: number;
}

export interface PartFile {
  readonly meta: {
    readonly size?: Readonly<Partial<Record<SizeKey, number>>>;
    readonly lip?: number;
    readonly turns?: Turns;
    readonly anchors?: Readonly<Record<string, readonly [x: number, y: number, leaves: string]>>;
    /** Drawings that come with it. */
    readonly with?: readonly string[];
  };
  readonly groups: Readonly<Record<string, readonly Piece[]>>;
}
