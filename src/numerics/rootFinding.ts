/** One root of a continuous function in a bracket: the Illinois form of false position with bisection as the guard. */

export class RootError extends Error {
  override readonly name = 'RootError';
}

/**
 * x in [low, high] with f(x) = 0 to `tolerance` in x. The ends must differ in sign (or be the root).
 * Throws `RootError` if they do not, or after 200 rounds.
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new RootError(`no change of sign between ${low} (${fa}) and ${high} (${fb})`);
  let side = 0;
  let previous = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 200; round++) {
    const secant = (a * fb - b * fa) / (fb - fa);
    const inside = secant > Math.min(a, b) && secant < Math.max(a, b);
    const x = inside && round % 8 !== 7 ? secant : 0.5 * (a + b);
    const fx = f(x);
    if (fx === 0 || Math.abs(b - a) < tolerance || Math.abs(x - previous) < 0.1 * tolerance) return x;
    previous = x;
    if (fx * fb > 0) {
      b = x;
      fb = fx;
      if (side === -1) fa *= 0.5;
      side = -1;
    } else {
      a = x;
      fa = fx;
      if (side === 1) fb *= 0.5;
      side = 1;
    }
  }
  throw new RootError(`no root found between ${low} and ${high} to ${tolerance}`);
}
