/**
 * Where a strip of the last minutes has its curve and its marks. View box 640 x 138; the newest second at the right edge.
 */

export const LANE_WIDTH = 640;
export const LANE_HEIGHT = 138;
export const LANE_FRAME = { left: 58, right: 14, top: 26, bottom: 28 } as const;

/** About as many steps a scale of this height would have. */
const LANE_STEPS = 5;

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** At least a minute, so that the first seconds are no wall. */
export const spanTo = (second: number, mostS: number): Span => ({
  from: Math.max(0, second - mostS),
  to: Math.max(second, 60),
});

export const laneX = (second: number, { from, to }: Span): number => {
  const share = (second - from) / (to - from);
  return LANE_FRAME.left + share * (LANE_WIDTH - LANE_FRAME.left - LANE_FRAME.right);
};

/** Nought is always in it, ten units at the least, and both ends are figures a scale would have. */
export function laneRange(values: readonly number[]): Span {
  const known = values.filter(Number.isFinite);
  const [low, high] = [Math.min(0, ...known), Math.max(10, ...known)];
  const step = niceStep((high - low) / LANE_STEPS);
  return { from: Math.floor(low / step) * step, to: Math.ceil(high / step) * step };
}

/** The first of 1, 2, 5, 10, 20… that is not under it. */
function niceStep(least: number): number {
  let ten = 1;
  while (ten * 10 < least) ten *= 10;
  return [1, 2, 5, 10].map((share) => share * ten).find((step) => step >= least) ?? ten;
}

export const laneY = (value: number, { from, to }: Span): number => {
  const share = (value - from) / (to - from);
  return LANE_HEIGHT - LANE_FRAME.bottom - share * (LANE_HEIGHT - LANE_FRAME.top - LANE_FRAME.bottom);
};

/** The curve, with a gap where nothing was read. A library's curve would cost the bay 3 kB for these straight lines. */
export function lanePath(
  seconds: readonly number[],
  values: readonly number[],
  span: Span,
  range: Span,
): string {
  let path = '';
  let isDrawing = false;
  seconds.forEach((second, i) => {
    const isShown = Number.isFinite(values[i]) && second >= span.from;
    if (isShown)
      path += `${isDrawing ? 'L' : 'M'}${tenth(laneX(second, span))},${tenth(laneY(values[i], range))}`;
    isDrawing = isShown;
  });
  return path;
}

const tenth = (value: number): number => Math.round(10 * value) / 10;

/** Full minutes that have a mark along the foot. */
export function laneMinutes({ from, to }: Span): number[] {
  const every = to - from > 300 ? 120 : 60;
  const first = Math.ceil(from / every) * every;
  return Array.from({ length: Math.floor((to - first) / every) + 1 }, (_, i) => first + i * every);
}

/** Half a minute's label as it is written on a small screen. */
const LABEL_HALF = 46;

/** A label near an edge keeps within it, clear of the scale's own. */
export function minuteAnchor(second: number, span: Span): 'start' | 'middle' | 'end' {
  const x = laneX(second, span);
  if (x < LANE_FRAME.left + LABEL_HALF) return 'start';
  return x > LANE_WIDTH - LABEL_HALF ? 'end' : 'middle';
}

/** Places for marks that are `apart` wide: as near to their own as they can be without one lying over another. */
export function spread(own: readonly number[], apart: number): number[] {
  const placed: number[] = [];
  for (const x of own)
    placed.push(Math.max(x, (placed[placed.length - 1] ?? Number.NEGATIVE_INFINITY) + apart));
  let most = LANE_WIDTH - LANE_FRAME.right;
  for (let i = placed.length - 1; i >= 0; i--) {
    placed[i] = Math.min(placed[i], most);
    most = placed[i] - apart;
  }
  return placed;
}
