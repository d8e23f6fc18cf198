/**
 * A hose: shadow, edge, body, shade and light, all strokes of one smooth polyline. While it moves it is drawn as strokes
 * each time; at rest it is painted once.
 */
import { Container, Graphics, Sprite, Texture } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import { polyline } from '../drawing/paths';
import { type Drawing, mm, stroke } from '../drawing/record';
import { showStamp } from '../stamps';
import type { SceneContext } from './sceneNode';

export interface HoseLook {
  /** Palette token: low, high or chg. */
  readonly ink: string;
  readonly widthMm: number;
  /** Height over what lies below, mm. */
  readonly liftMm: number;
}

export interface HosePaint {
  readonly view: Container;
  paint(chain: readonly PointMm[], look: HoseLook, moving: boolean): void;
  clear(): void;
}

export function createHosePaint(context: SceneContext): HosePaint {
  const view = new Container();
  const strokes = new Graphics();
  const still = new Sprite();
  view.addChild(still, strokes);
  const clear = (): void => {
    strokes.clear();
    if (still.texture !== Texture.EMPTY) still.texture.destroy(true);
    still.texture = Texture.EMPTY;
  };
  return {
    view,
    clear,
    paint(chain, look, moving) {
      clear();
      const points = smoothed(chain);
      if (moving)
        for (const line of strokesOf(look)) trace(strokes, points, line, context.palette()[line.ink]);
      else showStamp(still, context.stamps.once(strokesOf(look).map((line) => record(points, line))));
    },
  };
}

interface Stroke {
  readonly dx: number;
  readonly dy: number;
  readonly width: number;
  readonly ink: string;
  readonly alpha: number;
}

const SHADOWS = [
  [0.5, 0.16],
  [0.8, 0.13],
  [1.1, 0.1],
] as const;

const strokesOf = ({ ink, widthMm: w, liftMm: lift }: HoseLook): Stroke[] => [
  ...SHADOWS.map(([k, alpha]) => ({
    dx: lift * 0.6 * k,
    dy: lift * 0.55 * k,
    width: w,
    ink: 'shadow',
    alpha,
  })),
  { dx: 0, dy: 0, width: w + 3.4, ink: `${ink}-d`, alpha: 1 },
  { dx: 0, dy: 0, width: w, ink, alpha: 1 },
  { dx: w * 0.17, dy: w * 0.17, width: w * 0.4, ink: `${ink}-d`, alpha: 0.45 },
  { dx: -w * 0.16, dy: -w * 0.16, width: w * 0.3, ink: `${ink}-a`, alpha: 0.95 },
];

const record = (points: readonly PointMm[], { dx, dy, width, ink, alpha }: Stroke): Drawing[number] =>
  stroke(polyline(points.map(([x, y]) => [x + dx, y + dy])), ink, mm(width), alpha, {
    cap: 'round',
    join: 'round',
  });

function trace(graphics: Graphics, points: readonly PointMm[], line: Stroke, color: string): void {
  const { dx, dy, width, alpha } = line;
  graphics.moveTo(points[0][0] + dx, points[0][1] + dy);
  for (let i = 1; i < points.length; i++) graphics.lineTo(points[i][0] + dx, points[i][1] + dy);
  graphics.stroke({ color, width, alpha, cap: 'round', join: 'round' });
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
function smoothed(chain: readonly PointMm[]): PointMm[] {
  const points: PointMm[] = [chain[0]];
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
      points.push([at(0), at(1)]);
    }
  }
  return points;
}
