/**
 * Slopes of the cubic spline through (xs, ys), uneven spacing, not-a-knot ends (de Boor, A Practical Guide to Splines,
 * 1978, ch. IV). With these slopes a Hermite cubic per interval is the spline. At least four points.
 */
export function splineSlopes(xs: ArrayLike<number>, ys: ArrayLike<number>): Float64Array {
  const n = xs.length;
  if (n < 4) throw new RangeError('a not-a-knot spline needs at least four points');
  const width = new Float64Array(n - 1);
  const secant = new Float64Array(n - 1);
  for (let i = 0; i < n - 1; i++) {
    width[i] = xs[i + 1] - xs[i];
    secant[i] = (ys[i + 1] - ys[i]) / width[i];
  }
  const diagonal = new Float64Array(n);
  const upper = new Float64Array(n);
  const slope = new Float64Array(n);
  const firstSpan = width[0] + width[1];
  diagonal[0] = width[1];
  upper[0] = firstSpan;
  slope[0] =
    ((width[0] + 2 * firstSpan) * width[1] * secant[0] + width[0] * width[0] * secant[1]) / firstSpan;
  for (let i = 1; i < n - 1; i++) {
    const factor = -width[i] / diagonal[i - 1];
    slope[i] = factor * slope[i - 1] + 3 * (width[i] * secant[i - 1] + width[i - 1] * secant[i]);
    diagonal[i] = factor * upper[i - 1] + 2 * (width[i - 1] + width[i]);
    upper[i] = width[i - 1];
  }
  const lastSpan = width[n - 2] + width[n - 3];
  const rightSide =
    (width[n - 2] * width[n - 2] * secant[n - 3] +
      (2 * lastSpan + width[n - 2]) * width[n - 3] * secant[n - 2]) /
    lastSpan;
  const factor = -lastSpan / diagonal[n - 2];
  slope[n - 1] = (factor * slope[n - 2] + rightSide) / (factor * upper[n - 2] + width[n - 3]);
  for (let i = n - 2; i >= 0; i--) slope[i] = (slope[i] - upper[i] * slope[i + 1]) / diagonal[i];
  return slope;
}
