/** Plane transforms as in SVG: x' = a·x + c·y + e, y' = b·x + d·y + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const move = (x: number, y: number): Matrix => [1, 0, 0, 1, x, y];

export function turn(degrees: number, x = 0, y = 0): Matrix {
  const angle = (degrees * Math.PI) / 180;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return [c, s, -s, c, x - c * x + s * y, y - s * x - c * y];
}

export const scale = (k: number): Matrix => [k, 0, 0, k, 0, 0];

/** `outer` applied after `inner`. */
export function multiply(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

/** Several transforms, the last one applied first, as they are read in SVG. */
export const chain = (...matrices: readonly Matrix[]): Matrix => matrices.reduce(multiply);
