/**
 * Arrows on a way through the drawing: where each stands and points. They move by 6 px/s for every 10 g/s that flow; one,
 * two or three strokes say how much.
 */

/** px a second for each kg/s. */
const PX_PER_KG = 600;
const SPACING_PX = 84;

export const speedPxPerS = (flowKgPerS: number): number => PX_PER_KG * flowKgPerS;

/** Less than this is no flow to speak of. */
const LEAST_KG_PER_S = 0.0005;
const TWO_FROM_KG_PER_S = 0.015;
const THREE_FROM_KG_PER_S = 0.03;

/** Strokes of an arrow; 0 where nothing flows. */
export function strokesOf(flowKgPerS: number): 0 | 1 | 2 | 3 {
  if (!(flowKgPerS > LEAST_KG_PER_S)) return 0;
  if (flowKgPerS < TWO_FROM_KG_PER_S) return 1;
  return flowKgPerS < THREE_FROM_KG_PER_S ? 2 : 3;
}

type Corner = readonly [x: number, y: number];

export interface Stand {
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
}

const lengthOf = (from: Corner, to: Corner): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** Arrows along a way of straight stretches, all shifted by `movedPx`; they come round again at its start. */
export function arrowsAlong(way: readonly Corner[], movedPx: number): Stand[] {
  const stretches = way.slice(1).map((to, i) => ({ from: way[i], to, length: lengthOf(way[i], to) }));
  const whole = stretches.reduce((sum, { length }) => sum + length, 0);
  const count = Math.max(1, Math.round(whole / SPACING_PX));
  const apart = whole / count;
  return Array.from({ length: count }, (_, i) => {
    let along = ((i + 0.5) * apart + movedPx) % whole;
    const stretch = stretches.find(({ length }) => {
      if (along <= length) return true;
      along -= length;
      return false;
    });
    const { from, to, length } = stretch ?? stretches[stretches.length - 1];
    const share = Math.min(1, along / length);
    return {
      x: from[0] + share * (to[0] - from[0]),
      y: from[1] + share * (to[1] - from[1]),
      turnDeg: (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI,
    };
  });
}
