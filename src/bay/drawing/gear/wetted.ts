/**
 * Where liquid wets the wall of a tilted can: its outline cut by the level surface that leaves the share of the area below
 * it that the liquid has. In the can's own frame, y down when it stands upright.
 */
export type Corner = readonly [x: number, y: number];

export interface Wetted {
  /** Outline of the wetted part; empty where there is none. */
  readonly outline: readonly Corner[];
  /** The liquid's surface from wall to wall. */
  readonly surface: readonly [Corner, Corner];
  /** Up, as the can sees it. */
  readonly up: Corner;
  contains(x: number, y: number): boolean;
}

const CORNER_CUTS = 5;
const HALVINGS = 18;

export function wetted(w: number, h: number, radius: number, level: number, tiltDeg: number): Wetted {
  const angle = (tiltDeg * Math.PI) / 180;
  const [dx, dy] = [Math.sin(angle), Math.cos(angle)];
  const whole = rounded(w, h, radius);
  const depth = ([x, y]: Corner): number => x * dx + y * dy;
  const wanted = areaOf(whole) * Math.max(0, Math.min(1, level));
  let [low, high] = [-w - h, w + h];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (areaOf(below(whole, depth, middle)) > wanted) low = middle;
    else high = middle;
  }
  const outline = below(whole, depth, high);
  const across = outline.filter((corner) => Math.abs(depth(corner) - high) < 0.5);
  const along = ([x, y]: Corner): number => x * dy - y * dx;
  const sorted = [...across].sort((a, b) => along(a) - along(b));
  return {
    outline,
    surface: [sorted[0] ?? [0, 0], sorted[sorted.length - 1] ?? [0, 0]],
    up: [-dx, -dy],
    contains: (x, y) => depth([x, y]) > high,
  };
}

/** The part of a convex outline that lies deeper than a level. */
function below(outline: readonly Corner[], depth: (corner: Corner) => number, level: number): Corner[] {
  return outline.flatMap((corner, i): Corner[] => {
    const next = outline[(i + 1) % outline.length];
    const [a, b] = [depth(corner) - level, depth(next) - level];
    const kept: Corner[] = a >= 0 ? [corner] : [];
    if (a >= 0 === b >= 0) return kept;
    const k = a / (a - b);
    return [...kept, [corner[0] + (next[0] - corner[0]) * k, corner[1] + (next[1] - corner[1]) * k]];
  });
}

function areaOf(outline: readonly Corner[]): number {
  let twice = 0;
  outline.forEach(([x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length];
    twice += x * ny - nx * y;
  });
  return Math.abs(twice) / 2;
}

function rounded(w: number, h: number, radius: number): Corner[] {
  const middles = [
    [w / 2 - radius, -h / 2 + radius, -90],
    [w / 2 - radius, h / 2 - radius, 0],
    [-w / 2 + radius, h / 2 - radius, 90],
    [-w / 2 + radius, -h / 2 + radius, 180],
  ] as const;
  return middles.flatMap(([x, y, from]) =>
    Array.from({ length: CORNER_CUTS + 1 }, (_, i): Corner => {
      const angle = ((from + (90 * i) / CORNER_CUTS) * Math.PI) / 180;
      return [x + Math.cos(angle) * radius, y + Math.sin(angle) * radius];
    }),
  );
}
