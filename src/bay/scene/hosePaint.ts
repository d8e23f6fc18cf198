/**
 * A hose: shadow, edge, body, shade and light, all strokes of one smooth polyline. Its shadow lies the farther off the
 * higher the hose hangs there. While it moves it is drawn as strokes each time; at rest it is painted once.
 */
import { Container, Sprite, Texture } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import type { Palette } from '../drawing/palette';
import { polyline } from '../drawing/paths';
import { type Drawing, mm, stroke } from '../drawing/record';
import { showStamp } from '../stamps';
import { type WayStroke, WayStrokes } from '../wayStrokes';
import type { SceneContext } from './sceneNode';

export interface HoseLook {
  /** Palette token: low, high or chg. */
  readonly ink: string;
  readonly widthMm: number;
  /** Cover 0..1 of its skin; none where nothing is said. */
  readonly frost?: number;
  readonly sweat?: number;
}

/** A point of a hose and its height over what lies below, mm. */
export type HangingPoint = readonly [x: number, y: number, heightMm: number];

export interface HosePaint {
  readonly view: Container;
  paint(chain: readonly HangingPoint[], look: HoseLook, moving: boolean): void;
  clear(): void;
}

export function createHosePaint(context: SceneContext): HosePaint {
  const view = new Container();
  const strokes = new WayStrokes();
  const still = new Sprite();
  view.addChild(still, strokes);
  const clear = (): void => {
    strokes.strokes = [];
    if (still.texture !== Texture.EMPTY) still.texture.destroy(true);
    still.texture = Texture.EMPTY;
  };
  return {
    view,
    clear,
    paint(chain, look, moving) {
      clear();
      const points = smoothed(chain);
      if (moving) strokes.strokes = inked(points, strokesOf(look), context.palette());
      else showStamp(still, context.stamps.once(strokesOf(look).map((line) => record(points, line))));
    },
  };
}

interface Stroke {
  readonly dx: number;
  readonly dy: number;
  /** How far it lies off for each millimetre of height. */
  readonly off: number;
  readonly width: number;
  readonly ink: string;
  readonly alpha: number;
}

const SHADOWS = [
  [0.35, 0.16],
  [0.55, 0.13],
  [0.75, 0.1],
] as const;
/** Light comes from the upper left: how far a shadow lies right and down. */
const [SHADOW_X, SHADOW_Y] = [0.6, 0.55];

const strokesOf = ({ ink, widthMm: w, frost = 0, sweat = 0 }: HoseLook): Stroke[] => [
  ...SHADOWS.map(([off, alpha]) => ({ dx: 0, dy: 0, off, width: w, ink: 'shadow', alpha })),
  { dx: 0, dy: 0, off: 0, width: w + 3.4, ink: `${ink}-d`, alpha: 1 },
  { dx: 0, dy: 0, off: 0, width: w, ink, alpha: 1 },
  { dx: w * 0.17, dy: w * 0.17, off: 0, width: w * 0.4, ink: `${ink}-d`, alpha: 0.45 },
  { dx: -w * 0.16, dy: -w * 0.16, off: 0, width: w * 0.3, ink: `${ink}-a`, alpha: 0.95 },
  ...cold('frost', frost, w),
  ...(frost > 0 ? [] : cold('dew', sweat, w)),
];

/** A thin coat: the hose's colour shows through, and more of it along its shaded side. */
const cold = (ink: 'frost' | 'dew', cover: number, w: number): Stroke[] =>
  cover > 0
    ? [
        { dx: -w * 0.08, dy: -w * 0.08, off: 0, width: w * 0.7, ink, alpha: 0.2 + 0.34 * cover },
        { dx: -w * 0.14, dy: -w * 0.14, off: 0, width: w * 0.34, ink, alpha: 0.3 + 0.4 * cover },
      ]
    : [];

const record = (points: readonly HangingPoint[], line: Stroke): Drawing[number] =>
  stroke(
    polyline(points.map((point): PointMm => [xOf(point, line), yOf(point, line)])),
    line.ink,
    mm(line.width),
    line.alpha,
    { cap: 'round', join: 'round' },
  );

const xOf = ([x, , height]: HangingPoint, { dx, off }: Stroke): number => x + dx + off * height * SHADOW_X;
const yOf = ([, y, height]: HangingPoint, { dy, off }: Stroke): number => y + dy + off * height * SHADOW_Y;

/** What lies at no height goes the same way, beside it. */
function inked(points: readonly HangingPoint[], lines: readonly Stroke[], palette: Palette): WayStroke[] {
  const ways = new Map<number, Path2D>();
  return lines.map((line) => {
    const { dx, dy, off, width, ink, alpha } = line;
    const way = ways.get(off) ?? wayOf(points, off);
    ways.set(off, way);
    return { way, dx, dy, width, color: palette[ink], alpha };
  });
}

function wayOf(points: readonly HangingPoint[], off: number): Path2D {
  const way = new Path2D();
  for (const [x, y, height] of points) way.lineTo(x + off * height * SHADOW_X, y + off * height * SHADOW_Y);
  return way;
}

/** A hose goes on to the left edge of what is seen, level, where more than its frame is seen. */
export function toLeftEdge(chain: readonly PointMm[], leftMm: number): readonly PointMm[] {
  const [x, y] = chain[chain.length - 1];
  return x > leftMm - BEYOND_MM ? [...chain, [leftMm - BEYOND_MM, y]] : chain;
}

const BEYOND_MM = 30;

/** Points between two bodies of the chain. */
const SUBDIVISIONS = 4;

/** Catmull-Rom through the chain. */
function smoothed(chain: readonly HangingPoint[]): HangingPoint[] {
  const points: HangingPoint[] = [chain[0]];
  for (let i = 0; i < chain.length - 1; i++) {
    const [p0, p1, p2, p3] = [
      chain[Math.max(0, i - 1)],
      chain[i],
      chain[i + 1],
      chain[Math.min(chain.length - 1, i + 2)],
    ];
    for (let k = 1; k <= SUBDIVISIONS; k++) {
      const t = k / SUBDIVISIONS;
      const at = (j: 0 | 1): number =>
        0.5 *
        (2 * p1[j] +
          (p2[j] - p0[j]) * t +
          (2 * p0[j] - 5 * p1[j] + 4 * p2[j] - p3[j]) * t * t +
          (3 * p1[j] - p0[j] - 3 * p2[j] + p3[j]) * t * t * t);
      points.push([at(0), at(1), p1[2] + (p2[2] - p1[2]) * t]);
    }
  }
  return points;
}
