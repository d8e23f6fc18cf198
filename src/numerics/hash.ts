/**
 * 64-bit hash of numbers or text as 16 hex digits: two 32-bit lanes, each mixed with the multiply-rotate-multiply step
 * and finished with the avalanche of MurmurHash3 (Appleby, public domain). A fingerprint, not a seal. Same bits
 * everywhere; -0 and 0 differ; every NaN counts as one value.
 */
const SEED_A = 0x9e3779b9;
const SEED_B = 0x7f4a7c15;

/** Hash of the first `length` numbers, bit for bit. */
export function hashFloats(values: Float64Array, length: number = values.length): string {
  const words = new Uint32Array(values.buffer, values.byteOffset, 2 * length);
  let a = SEED_A;
  let b = SEED_B;
  for (let i = 0; i < length; i++) {
    const isNumber = !Number.isNaN(values[i]);
    const low = isNumber ? words[2 * i] : 0;
    const high = isNumber ? words[2 * i + 1] : 0x7ff80000;
    a = mixWord(mixWord(a, low), high);
    b = mixWord(mixWord(b, high ^ a), low);
  }
  return finish(a, b, length);
}

/** Hash of a text, by UTF-16 code unit. */
export function hashText(text: string): string {
  let a = SEED_A;
  let b = SEED_B;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    a = mixWord(a, unit);
    b = mixWord(b, unit ^ a);
  }
  return finish(a, b, text.length);
}

/** 32-bit hash of a text, for keys. */
export function hashTextWord(text: string): number {
  let hash = SEED_A;
  for (let i = 0; i < text.length; i++) hash = mixWord(hash, text.charCodeAt(i));
  return avalanche(hash ^ text.length);
}

export function mixWord(hash: number, word: number): number {
  let k = Math.imul(word, 0xcc9e2d51);
  k = (k << 15) | (k >>> 17);
  const h = hash ^ Math.imul(k, 0x1b873593);
  return (Math.imul((h << 13) | (h >>> 19), 5) + 0xe6546b64) | 0;
}

export function avalanche(hash: number): number {
  let h = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

function finish(a: number, b: number, length: number): string {
  const first = avalanche(a ^ length);
  const second = avalanche(b ^ Math.imul(first, 5));
  return hex(first) + hex(second);
}

function hex(word: number): string {
  return word.toString(16).padStart(8, '0');
}
