/**
 * x^y with the same bits in every engine: ln x as a sum of two doubles, times y with the rounding kept (Dekker's split
 * product, Numer. Math. 18 (1971) 224), then exp. Whole powers up to 64 go by repeated squaring. Error a few ulp.
 */
import { floatView, HIGH, wordView } from './bits';
import { exp } from './exp';

const SPLIT = 134217729; // 2^27 + 1
const LARGEST_WHOLE = 64;
const LN2_HIGH = 6.9314718036912381649e-1;
const LN2_LOW = 1.90821492927058770002e-10;
const TWO_54 = 18014398509481984;
const SMALLEST_NORMAL = 2.2250738585072014e-308;
const MOST_EXPONENT = 800;

/** x to the power `y`, for x >= 0 or whole y up to 64; NaN otherwise. */
export function pow(x: number, y: number): number {
  if (y === 0) return 1;
  if (y === Math.floor(y) && Math.abs(y) <= LARGEST_WHOLE)
    return y > 0 ? wholePower(x, y) : 1 / wholePower(x, -y);
  if (!(x > 0)) return x === 0 ? (y > 0 ? 0 : Number.POSITIVE_INFINITY) : Number.NaN;
  if (x === Number.POSITIVE_INFINITY) return y > 0 ? x : 0;
  splitLogarithm(x);
  const product = y * logHigh;
  if (!(Math.abs(product) < MOST_EXPONENT)) return exp(product);
  const rest = productError(y, logHigh, product) + y * logLow;
  const value = exp(product);
  return value + value * rest;
}

/** x^n for whole n >= 0. */
function wholePower(x: number, n: number): number {
  let result = 1;
  let square = x;
  for (let left = n; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) result *= square;
    square *= square;
  }
  return result;
}

/** ln x as high + low, left by `splitLogarithm`. */
let logHigh = 0;
let logLow = 0;

/** As in ln.ts, with the remainder of s = f/(2 + f) and of the sum kept. */
function splitLogarithm(x: number): void {
  let k = 0;
  floatView[0] = x < SMALLEST_NORMAL ? x * TWO_54 : x;
  if (x < SMALLEST_NORMAL) k = -54;
  const word = wordView[HIGH];
  const mantissa = word & 0xfffff;
  const halve = (mantissa + 0x95f64) & 0x100000;
  k += (word >>> 20) - 1023 + (halve >>> 20);
  wordView[HIGH] = mantissa | (halve ^ 0x3ff00000);
  const f = floatView[0] - 1;
  const divisor = 2 + f;
  const s = f / divisor;
  const product = s * divisor;
  const remainder = f - product - productError(s, divisor, product) - s * (f - (divisor - 2));
  const tail = s * logarithmSeries(s * s) + 2 * (remainder / divisor) + k * LN2_LOW;
  const whole = k * LN2_HIGH;
  const sum = whole + 2 * s;
  const lost = whole - sum + 2 * s;
  logHigh = sum + (lost + tail);
  logLow = lost + tail - (logHigh - sum);
}

/** (ln((1 + s)/(1 - s)) - 2 s)/s as a polynomial in z = s^2 (FDLIBM, e_log.c). */
function logarithmSeries(z: number): number {
  const high = 3.999999999940941908e-1 + z * (2.857142874366239149e-1 + z * lastTerms(z));
  return z * (6.66666666666673513e-1 + z * high);
}

function lastTerms(z: number): number {
  return (
    2.222219843214978396e-1 +
    z * (1.818357216161805012e-1 + z * (1.531383769920937332e-1 + z * 1.479819860511658591e-1))
  );
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
