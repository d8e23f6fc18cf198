/**
 * One root of a continuous function in a bracket: false position in the Illinois form (Dowell and Jarratt, BIT 11 (1971)
 * 168), with a halving every fourth round so that no function is slow.
 */

export class RootError extends Error {
  override readonly name = 'RootError';
}

const MOST_ROUNDS = 400;

/**
 * x in [low, high] with f(x) = 0, the bracket closed to `tolerance` in x or to neighbouring doubles. The ends must differ
 * in sign (or be the root). Throws `RootError` if they do not.
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa < 0 !== fb < 0))
    throw new RootError(`no change of sign between ${low} (${fa}) and ${high} (${fb})`);
  let side = 0;
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    const secant = (a * fb - b * fa) / (fb - fa);
    const inside = secant > Math.min(a, b) && secant < Math.max(a, b);
    const x = inside && round % 4 !== 0 ? secant : 0.5 * (a + b);
    if (x === a || x === b) return x;
    const fx = f(x);
    if (fx === 0) return x;
    if (fx < 0 === fb < 0) {
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
    if (Math.abs(b - a) < tolerance) return x;
  }
  throw new RootError(`no root found between ${low} and ${high} to ${tolerance}`);
}
