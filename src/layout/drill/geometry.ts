/** Distances in the drill's straight ways: from a point to a rectangle, to a stretch, to a whole way. */
import type { PointMm, RectMm } from '../layout';

export function toRect([px, py]: PointMm, [x, y, w, h]: RectMm): number {
  const dx = Math.max(x - px, 0, px - (x + w));
  const dy = Math.max(y - py, 0, py - (y + h));
  return Math.sqrt(dx * dx + dy * dy);
}

/** Nearest point of a straight stretch to a point. */
export function nearestOn([px, py]: PointMm, a: PointMm, b: PointMm): PointMm {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const square = ux * ux + uy * uy;
  const share = square === 0 ? 0 : Math.max(0, Math.min(1, ((px - a[0]) * ux + (py - a[1]) * uy) / square));
  return [a[0] + ux * share, a[1] + uy * share];
}

export function apart(a: PointMm, b: PointMm): number {
  const [dx, dy] = [a[0] - b[0], a[1] - b[1]];
  return Math.sqrt(dx * dx + dy * dy);
}

/** How far a point is from a way. */
export function toWay(point: PointMm, way: readonly PointMm[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < way.length; i++)
    least = Math.min(least, apart(point, nearestOn(point, way[i - 1], way[i])));
  return least;
}

/** How far a rectangle is from an upright or level way; 0 where they meet. */
export function rectToWay([x, y, w, h]: RectMm, way: readonly PointMm[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < way.length; i++) {
    const [a, b] = [way[i - 1], way[i]];
    const dx = Math.max(x - Math.max(a[0], b[0]), 0, Math.min(a[0], b[0]) - (x + w));
    const dy = Math.max(y - Math.max(a[1], b[1]), 0, Math.min(a[1], b[1]) - (y + h));
    least = Math.min(least, Math.sqrt(dx * dx + dy * dy));
  }
  return least;
}

export const overlap = (a: RectMm, b: RectMm, room: number): boolean =>
  a[0] < b[0] + b[2] + room &&
  b[0] < a[0] + a[2] + room &&
  a[1] < b[1] + b[3] + room &&
  b[1] < a[1] + a[3] + room;
