/**
 * x^y with the same bits in every engine: ln x to about 70 bits as a sum of two doubles, times y exactly (Dekker's split
 * product, Numer. Math. 18 (1971) 224), then exp. Whole powers up to 64 go by repeated squaring. Error a few ulp.
 */
import { exp } from './exp';
import { ln } from './ln';

const SPLIT = 134217729; // 2^27 + 1
const LARGEST_WHOLE = 64;

/** x to the power y, for x >= 0 or whole y up to 64; NaN otherwise. */
export function pow(x: number, y: number): number {
  if (y === 0) return 1;
  if (y === Math.floor(y) && Math.abs(y) <= LARGEST_WHOLE) return y > 0 ? wholePower(x, y) : 1 / wholePower(x, -y);
  if (!(x > 0)) return x === 0 ? (y > 0 ? 0 : Number.POSITIVE_INFINITY) : Number.NaN;
  if (x === 1) return 1;
  const high = ln(x);
  if (!(Math.abs(high) < 800)) return exp(y * high);
  const near = exp(high);
  const low = (x - near) / near; // first-order correction of ln x beyond its last bit
  const product = y * high;
  if (!(Math.abs(product) < 800)) return exp(product);
  const rest = productError(y, high, product) + y * low;
  const value = exp(product);
  return value + value * rest;
}

/** x^n for whole n >= 0. */
export function wholePower(x: number, n: number): number {
  let result = 1;
  let square = x;
  for (let left = n; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) result *= square;
    square *= square;
  }
  return result;
}

/** a*b - product, exactly, where product is the rounded a*b. */
function productError(a: number, b: number, product: number): number {
  const aBig = a * SPLIT;
  const aHigh = aBig - (aBig - a);
  const aLow = a - aHigh;
  const bBig = b * SPLIT;
  const bHigh = bBig - (bBig - b);
  const bLow = b - bHigh;
  return aHigh * bHigh - product + aHigh * bLow + aLow * bHigh + aLow * bLow;
}
