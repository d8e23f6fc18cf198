/**
 * e^x with the same bits in every engine: argument reduction x = k ln 2 + r, |r| <= ln 2 / 2, then the rational form
 * of the published FDLIBM method (Sun Microsystems, e_exp.c, 1993). Only + - * / and exact scaling by powers of two.
 * Error under 1 ulp.
 */
import { powerOfTwo } from './bits';

const LN2_HIGH = 6.9314718036912381649e-1;
const LN2_LOW = 1.90821492927058770002e-10;
const INVERSE_LN2 = 1.442695040888963387;
const P1 = 1.66666666666666019037e-1;
const P2 = -2.77777777770155933842e-3;
const P3 = 6.61375632143793436117e-5;
const P4 = -1.6533902205465251539e-6;
const P5 = 4.13813679705723846039e-8;
const OVERFLOW = 7.09782712893383973096e2;
const UNDERFLOW = -7.4513321910194110842e2;

/** e to the power `x`. */
export function exp(x: number): number {
  if (Number.isNaN(x)) return x;
  if (x > OVERFLOW) return Number.POSITIVE_INFINITY;
  if (x < UNDERFLOW) return 0;
  const k = Math.floor(INVERSE_LN2 * x + 0.5);
  return expReduced(x - k * LN2_HIGH, k * LN2_LOW, k);
}

/** e^(high - low) * 2^k for |high| a little over ln 2 / 2 at most. */
export function expReduced(high: number, low: number, k: number): number {
  const r = high - low;
  const t = r * r;
  const c = r - t * (P1 + t * (P2 + t * (P3 + t * (P4 + t * P5))));
  const y = 1 - (low - (r * c) / (2 - c) - high);
  if (k > 1023) return y * 2 * powerOfTwo(k - 1);
  if (k >= -1021) return y * powerOfTwo(k);
  return y * powerOfTwo(k + 1000) * powerOfTwo(-1000);
}
