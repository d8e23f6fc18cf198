/** Small interpolation helpers, all allocation-free. */

export function clamp(value: number, low: number, high: number): number {
  return value < low ? low : value > high ? high : value;
}

/** a at ratio 0, b at ratio 1. */
export function lerp(a: number, b: number, ratio: number): number {
  return a + (b - a) * ratio;
}

/** 0 below `low`, 1 above `high`, between them the cubic with level ends. */
export function smoothStep(low: number, high: number, value: number): number {
  const t = clamp((value - low) / (high - low), 0, 1);
  return t * t * (3 - 2 * t);
}

/** Straight lines through (xs, ys); flat beyond the ends. `xs` rises. */
export function interpolateLinear(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const last = xs.length - 1;
  if (!(x > xs[0])) return ys[0];
  if (x >= xs[last]) return ys[last];
  const i = intervalIndex(xs, x);
  return lerp(ys[i], ys[i + 1], (x - xs[i]) / (xs[i + 1] - xs[i]));
}

/** The i with xs[i] <= x < xs[i + 1], held inside the table. */
export function intervalIndex(xs: ArrayLike<number>, x: number): number {
  let low = 0;
  let high = xs.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle] <= x) low = middle;
    else high = middle;
  }
  return low;
}
