/**
 * Natural logarithm with the same bits in every engine: x = 2^k (1 + f), sqrt(1/2) < 1 + f < sqrt 2, then the series in
 * s = f/(2 + f) of the published FDLIBM method (Sun Microsystems, e_log.c, 1993). Error under 1 ulp.
 */
import { floatView, HIGH, wordView } from './bits';

const LN2_HIGH = 6.9314718036912381649e-1;
const LN2_LOW = 1.90821492927058770002e-10;
const L1 = 6.66666666666673513e-1;
const L2 = 3.999999999940941908e-1;
const L3 = 2.857142874366239149e-1;
const L4 = 2.222219843214978396e-1;
const L5 = 1.818357216161805012e-1;
const L6 = 1.531383769920937332e-1;
const L7 = 1.479819860511658591e-1;
const TWO_54 = 18014398509481984;
const SMALLEST_NORMAL = 2.2250738585072014e-308;

/** ln x; -Infinity at 0, NaN below. */
export function ln(x: number): number {
  if (!(x > 0)) return x === 0 ? Number.NEGATIVE_INFINITY : Number.NaN;
  if (x === Number.POSITIVE_INFINITY) return x;
  let k = 0;
  let scaled = x;
  if (x < SMALLEST_NORMAL) {
    scaled = x * TWO_54;
    k = -54;
  }
  floatView[0] = scaled;
  const high = wordView[HIGH];
  const mantissa = high & 0xfffff;
  const halve = (mantissa + 0x95f64) & 0x100000;
  k += (high >>> 20) - 1023 + (halve >>> 20);
  wordView[HIGH] = mantissa | (halve ^ 0x3ff00000);
  const f = floatView[0] - 1;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const even = w * (L2 + w * (L4 + w * L6));
  const odd = z * (L1 + w * (L3 + w * (L5 + w * L7)));
  const half = 0.5 * f * f;
  return k * LN2_HIGH - (half - (s * (half + even + odd) + k * LN2_LOW) - f);
}
