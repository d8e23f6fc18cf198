/**
 * The two 32-bit halves of a double, for the bit tricks of exp, ln and the table look-ups.
 * Every platform this program runs on is little-endian; `HIGH` is the half with sign and exponent.
 */
export const floatView = new Float64Array(1);
export const wordView = new Uint32Array(floatView.buffer);
export const LOW = 0;
export const HIGH = 1;

/** 2^exponent for -1022 <= exponent <= 1023, exactly. */
export function powerOfTwo(exponent: number): number {
  wordView[LOW] = 0;
  wordView[HIGH] = (exponent + 1023) << 20;
  return floatView[0];
}
