/** A hose on a pixi Graphics: shadow, edge, body, shade and light, all strokes of one smooth polyline. */
import type { Graphics } from 'pixi.js';
import type { PointMm } from '../../layout/layout';
import type { Palette } from '../drawing/palette';

export interface HoseLook {
  /** Palette token: low, high or chg. */
  readonly ink: string;
  readonly widthMm: number;
  /** Height over what lies below, mm. */
  readonly liftMm: number;
}

const SHADOWS = [
  [0.5, 0.16],
  [0.8, 0.13],
  [1.1, 0.1],
] as const;
/** Points between two bodies of the chain. */
const SUBDIVISIONS = 4;

export function paintHose(
  graphics: Graphics,
  chain: readonly PointMm[],
  look: HoseLook,
  palette: Palette,
): void {
  const points = smoothed(chain);
  const { ink, widthMm: w, liftMm: lift } = look;
  for (const [k, alpha] of SHADOWS)
    trace(graphics, points, lift * 0.6 * k, lift * 0.55 * k, w, palette.shadow, alpha);
  trace(graphics, points, 0, 0, w + 3.4, palette[`${ink}-d`], 1);
  trace(graphics, points, 0, 0, w, palette[ink], 1);
  trace(graphics, points, w * 0.17, w * 0.17, w * 0.4, palette[`${ink}-d`], 0.45);
  trace(graphics, points, -w * 0.16, -w * 0.16, w * 0.3, palette[`${ink}-a`], 0.95);
}

function trace(
  graphics: Graphics,
  points: readonly PointMm[],
  dx: number,
  dy: number,
  width: number,
  color: string,
  alpha: number,
): void {
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

/** Catmull-Rom through the chain. */
export function smoothed(chain: readonly PointMm[]): PointMm[] {
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
