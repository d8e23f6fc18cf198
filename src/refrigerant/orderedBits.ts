/**
 * Floating-point numbers as whole ones in the same order, so that two near ones differ by how many lie between them: the
 * bits of IEEE 754 are that already, but for those below nought.
 */
const doubles = new Float64Array(1);
const longs = new BigInt64Array(doubles.buffer);
const singles = new Float32Array(1);
const words = new Int32Array(singles.buffer);
const LOW_63 = 0x7fffffffffffffffn;
const LOW_31 = 0x7fffffff;

export interface OrderedBits {
  /** How many numbers lie from `from` up to `to`; not exact beyond 2^53. */
  apart(from: number, to: number): number;
  /** The number that many further on. */
  further(from: number, by: number): number;
}

const orderedLong = (value: number): bigint => {
  doubles[0] = value;
  return longs[0] < 0n ? longs[0] ^ LOW_63 : longs[0];
};

const orderedWord = (value: number): number => {
  singles[0] = value;
  return words[0] < 0 ? words[0] ^ LOW_31 : words[0];
};

export const doubleBits: OrderedBits = {
  apart: (from, to) => Number(orderedLong(to) - orderedLong(from)),
  further(from, by) {
    const ordered = orderedLong(from) + BigInt(by);
    longs[0] = ordered < 0n ? ordered ^ LOW_63 : ordered;
    return doubles[0];
  },
};

export const singleBits: OrderedBits = {
  apart: (from, to) => orderedWord(to) - orderedWord(from),
  further(from, by) {
    const ordered = orderedWord(from) + by;
    words[0] = ordered < 0 ? ordered ^ LOW_31 : ordered;
    return singles[0];
  },
};
