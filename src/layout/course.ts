/**
 * A line's course: its way-points joined by straight runs and filleted bends, flattened to a polyline that can be
 * measured, cut and asked for the point at a given length.
 *
 * A bend between unit directions u and v with radius R leaves the straights R·tan(θ/2) before the corner, where
 * cos θ = −u·v; the radius shrinks where a straight is too short. The arc is cut into 16 by halving: the middle of two
 * unit vectors is their normalised sum. Only + − × ÷ and square roots, so that every machine gets the same bits.
 */
import type { PointMm, WayPoint } from './layout';

export interface Course {
  readonly points: readonly PointMm[];
  /** Length from the start to each point, mm. */
  readonly reach: readonly number[];
  readonly lengthMm: number;
}

/** A point on a course and the direction of travel there (unit vector). */
export interface Station {
  readonly x: number;
  readonly y: number;
  readonly tx: number;
  readonly ty: number;
}

const HALVINGS = 4;
/** A corner this close to straight (cosine of the angle between its arms) is left as it is. */
const STRAIGHT_COSINE = -0.9991;
/** Shares of a straight that a bend may use: nearly all at the ends of a line, half between two bends. */
const END_SHARE = 0.98;
const INNER_SHARE = 0.5;

export function courseOf(way: readonly WayPoint[], filletMm: number): Course {
  const points: PointMm[] = [[way[0][0], way[0][1]]];
  for (let i = 1; i < way.length - 1; i++) {
    const before = i === 1 ? END_SHARE : INNER_SHARE;
    const after = i === way.length - 2 ? END_SHARE : INNER_SHARE;
    points.push(...bend(way[i - 1], way[i], way[i + 1], way[i][2] ?? filletMm, before, after));
  }
  const last = way[way.length - 1];
  points.push([last[0], last[1]]);
  return measure(points);
}

export function measure(raw: readonly PointMm[]): Course {
  const points: PointMm[] = [];
  const reach: number[] = [];
  let lengthMm = 0;
  for (const point of raw) {
    const previous = points[points.length - 1];
    const step = previous ? distance(previous, point) : 0;
    if (previous && step < 0.05) continue;
    lengthMm += step;
    points.push(point);
    reach.push(lengthMm);
  }
  return { points, reach, lengthMm };
}

function bend(
  a: WayPoint,
  corner: WayPoint,
  b: WayPoint,
  fillet: number,
  before: number,
  after: number,
): PointMm[] {
  const u = direction(corner, a);
  const v = direction(corner, b);
  const cosine = Math.max(-1, Math.min(1, u.x * v.x + u.y * v.y));
  if (cosine < STRAIGHT_COSINE) return [[corner[0], corner[1]]];
  const halfTangent = Math.sqrt((1 - cosine) / (1 + cosine));
  const cut = Math.min(fillet / halfTangent, u.length * before, v.length * after);
  const radius = cut * halfTangent;
  const toCentre = radius / Math.sqrt((1 - cosine) / 2);
  const bisector = unit(u.x + v.x, u.y + v.y);
  const centre: PointMm = [corner[0] + bisector.x * toCentre, corner[1] + bisector.y * toCentre];
  const start = unit(corner[0] + u.x * cut - centre[0], corner[1] + u.y * cut - centre[1]);
  const end = unit(corner[0] + v.x * cut - centre[0], corner[1] + v.y * cut - centre[1]);
  return arc(start, end, HALVINGS).map((d) => [centre[0] + d.x * radius, centre[1] + d.y * radius]);
}

interface Direction {
  readonly x: number;
  readonly y: number;
}

/** Unit vectors from `start` to `end`, both included, 2^halvings steps between them. */
function arc(start: Direction, end: Direction, halvings: number): Direction[] {
  if (halvings === 0) return [start, end];
  const middle = unit(start.x + end.x, start.y + end.y);
  return [...arc(start, middle, halvings - 1), ...arc(middle, end, halvings - 1).slice(1)];
}

function direction(from: WayPoint, to: WayPoint): Direction & { readonly length: number } {
  const length = distance([from[0], from[1]], [to[0], to[1]]);
  return { x: (to[0] - from[0]) / length, y: (to[1] - from[1]) / length, length };
}

function unit(x: number, y: number): Direction {
  const length = Math.sqrt(x * x + y * y) || 1;
  return { x: x / length, y: y / length };
}

export function distance(a: PointMm, b: PointMm): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  return Math.sqrt(dx * dx + dy * dy);
}

/** Where the course is after `lengthMm`, clamped to its ends. */
export function stationAt(course: Course, lengthMm: number): Station {
  const { points, reach } = course;
  const s = Math.max(0, Math.min(course.lengthMm, lengthMm));
  let i = 1;
  while (i < points.length - 1 && reach[i] < s) i++;
  const [ax, ay] = points[i - 1];
  const [bx, by] = points[i];
  const run = reach[i] - reach[i - 1];
  const share = (s - reach[i - 1]) / run;
  return { x: ax + (bx - ax) * share, y: ay + (by - ay) * share, tx: (bx - ax) / run, ty: (by - ay) / run };
}

/** The stretch between two lengths, ends included. */
export function stretch(course: Course, fromMm: number, toMm: number): PointMm[] {
  const a = Math.max(0, fromMm);
  const b = Math.min(course.lengthMm, toMm);
  if (b <= a) return [];
  const start = stationAt(course, a);
  const end = stationAt(course, b);
  const inner = course.points.filter((_, i) => course.reach[i] > a && course.reach[i] < b);
  return [[start.x, start.y], ...inner, [end.x, end.y]];
}

/** Nearest station to a point: its length along the course and its distance, to within a millimetre. */
export function nearestStation(
  course: Course,
  point: PointMm,
): { readonly alongMm: number; readonly awayMm: number } {
  let best = { alongMm: 0, awayMm: Number.POSITIVE_INFINITY };
  for (let i = 1; i < course.points.length; i++) {
    const [ax, ay] = course.points[i - 1];
    const run = course.reach[i] - course.reach[i - 1];
    const tx = (course.points[i][0] - ax) / run;
    const ty = (course.points[i][1] - ay) / run;
    const along = Math.max(0, Math.min(run, (point[0] - ax) * tx + (point[1] - ay) * ty));
    const awayMm = distance(point, [ax + tx * along, ay + ty * along]);
    if (awayMm < best.awayMm) best = { alongMm: course.reach[i - 1] + along, awayMm };
  }
  return best;
}

/** Lengths along `a` at which `b` crosses it. */
export function crossings(a: Course, b: Course): number[] {
  const found: number[] = [];
  for (let i = 1; i < a.points.length; i++) {
    for (let j = 1; j < b.points.length; j++) {
      const share = crossingShare(a.points[i - 1], a.points[i], b.points[j - 1], b.points[j]);
      if (share !== null) found.push(a.reach[i - 1] + share * (a.reach[i] - a.reach[i - 1]));
    }
  }
  return found;
}

/** Share of p→q at which r→s crosses it, or null. */
function crossingShare(p: PointMm, q: PointMm, r: PointMm, s: PointMm): number | null {
  const ux = q[0] - p[0];
  const uy = q[1] - p[1];
  const vx = s[0] - r[0];
  const vy = s[1] - r[1];
  const turn = ux * vy - uy * vx;
  if (Math.abs(turn) < 1e-6) return null;
  const t = ((r[0] - p[0]) * vy - (r[1] - p[1]) * vx) / turn;
  const w = ((r[0] - p[0]) * uy - (r[1] - p[1]) * ux) / turn;
  return t >= 0 && t < 1 && w >= 0 && w < 1 ? t : null;
}
