/**
 * Whole numbers from 0 up as bits, the usual small ones short (R. F. Rice's code of 1979): z becomes z / 2^k in ones, a
 * nought, and the k low bits. k follows the mean of what came before, so nothing is written of it. A number far over the
 * mean is left out: a run of ones says so, and whoever writes puts the thing itself there, in words of 32 bits.
 */
const LONGEST_RUN = 16;
/** Share of the way that the mean goes with each number, and what one number may lift it by at most. */
const FOLLOWS = 0.15;
const MOST_TIMES = 64;
/** Of the mean, near where the code of numbers that fall off evenly is shortest (ln 2). */
const SHARE_OF_MEAN = 0.7;
const FIRST_MEAN = 4096;
const WORD = 32;

export interface RiceWriter {
  /** False where the number is left out. */
  put(value: number): boolean;
  leaveOut(): void;
  word(value: number): void;
  bytes(): Uint8Array;
}

export interface RiceReader {
  /** Null where a number was left out. */
  take(): number | null;
  word(): number;
}

/** How many low bits the next number has. */
function createMean() {
  let mean = FIRST_MEAN;
  return {
    lowBits(): number {
      let bits = 0;
      for (let reach = 2; reach <= SHARE_OF_MEAN * mean; reach *= 2) bits++;
      return bits;
    },
    follow(value: number, unit: number): void {
      mean += FOLLOWS * (Math.min(value, unit * MOST_TIMES) - mean);
    },
  };
}

const power = (bits: number): number => {
  let unit = 1;
  for (let i = 0; i < bits; i++) unit *= 2;
  return unit;
};

export function riceWriter(): RiceWriter {
  const bits: number[] = [];
  const mean = createMean();
  const low = (value: number, count: number): void => {
    for (let unit = power(count - 1); unit >= 1; unit /= 2) bits.push(Math.floor(value / unit) % 2);
  };
  const leaveOut = (): void => {
    for (let i = 0; i < LONGEST_RUN; i++) bits.push(1);
    mean.follow(Number.POSITIVE_INFINITY, power(mean.lowBits()));
  };
  return {
    put(value) {
      const count = mean.lowBits();
      const unit = power(count);
      const run = Math.floor(value / unit);
      if (run >= LONGEST_RUN) {
        leaveOut();
        return false;
      }
      for (let i = 0; i < run; i++) bits.push(1);
      bits.push(0);
      if (count > 0) low(value - run * unit, count);
      mean.follow(value, unit);
      return true;
    },
    leaveOut,
    word: (value) => low(value, WORD),
    bytes() {
      const bytes = new Uint8Array(Math.ceil(bits.length / 8));
      bits.forEach((bit, i) => {
        bytes[i >> 3] |= bit << (7 - (i & 7));
      });
      return bytes;
    },
  };
}

/** Reads what a writer wrote. */
export function riceReader(bytes: Uint8Array): RiceReader {
  const mean = createMean();
  let at = 0;
  const bit = (): number => {
    const found = (bytes[at >> 3] >> (7 - (at & 7))) & 1;
    at++;
    return found;
  };
  const low = (count: number): number => {
    let value = 0;
    for (let i = 0; i < count; i++) value = 2 * value + bit();
    return value;
  };
  return {
    take() {
      const count = mean.lowBits();
      const unit = power(count);
      let run = 0;
      while (run < LONGEST_RUN && bit() === 1) run++;
      const value = run < LONGEST_RUN ? run * unit + low(count) : null;
      mean.follow(value ?? Number.POSITIVE_INFINITY, unit);
      return value;
    },
    word: () => low(WORD),
  };
}
