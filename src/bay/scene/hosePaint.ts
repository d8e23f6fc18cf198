/**
 * A hose: shadow, edge, body, shade and light, all strokes of one smooth polyline. Its shadow lies the farther off the
 * higher the hose hangs there. While it moves it is inked each time, with fewer corners; at rest it is painted once.
 */
import { Container, Sprite, Texture } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import type { Palette } from '../drawing/palette';
import { polyline } from '../drawing/paths';
import { type Drawing, mm, stroke } from '../drawing/record';
import { showStamp } from '../stamps';
import { type WayStroke, WayStrokes } from '../wayStrokes';
import { ribbon } from './ribbon';
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
      const points = smoothed(chain, moving ? MOVING_SUBDIVISIONS : SUBDIVISIONS);
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
  stroke(polyline(wayOf(points, line)), line.ink, mm(line.width), line.alpha, {
    cap: 'round',
    join: 'round',
  });

const wayOf = (points: readonly HangingPoint[], { dx, dy, off }: Stroke): PointMm[] =>
  points.map(([x, y, height]) => [x + dx + off * height * SHADOW_X, y + dy + off * height * SHADOW_Y]);

const inked = (points: readonly HangingPoint[], lines: readonly Stroke[], palette: Palette): WayStroke[] =>
  lines.map((line) => ({
    way: ribbon(wayOf(points, line), line.width),
    width: null,
    color: palette[line.ink],
    alpha: line.alpha,
  }));

/** A hose goes on to the left edge of what is seen, level, where more than its frame is seen. */
export function toLeftEdge(chain: readonly PointMm[], leftMm: number): readonly PointMm[] {
  const [x, y] = chain[chain.length - 1];
  return x > leftMm - BEYOND_MM ? [...chain, [leftMm - BEYOND_MM, y]] : chain;
}

const BEYOND_MM = 30;

/** Points between two bodies of the chain, at rest and while it moves. */
const [SUBDIVISIONS, MOVING_SUBDIVISIONS] = [4, 2] as const;

/** Catmull-Rom through the chain. */
function smoothed(chain: readonly HangingPoint[], subdivisions: number): HangingPoint[] {
  const points: HangingPoint[] = [chain[0]];
  for (let i = 0; i < chain.length - 1; i++) {
    const [p0, p1, p2, p3] = [
      chain[Math.max(0, i - 1)],
      chain[i],
      chain[i + 1],
      chain[Math.min(chain.length - 1, i + 2)],
    ];
    for (let k = 1; k <= subdivisions; k++) {
      const t = k / subdivisions;
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
