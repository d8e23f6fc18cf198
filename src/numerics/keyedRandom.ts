/**
 * Keyed random numbers: a value is a pure function of (seed, purpose, instrument, step), so the order in which things
 * are asked for changes nothing. Integer hashing only; the normal deviate is Box and Muller (1958).
 */
import { avalanche, hashTextWord, mixWord } from './hash';
import { ln } from './ln';
import { cos } from './sine';

const TWO_PI = 6.283185307179586;
const TO_UNIT_HIGH = 1 / 67108864; // 2^-26
const TO_UNIT_LOW = 1 / 9007199254740992; // 2^-53

/** Uniform in [0, 1), 53 bits. `seed` and `step` are whole numbers; `instrument` may be empty. */
export function keyedUniform(seed: number, purpose: string, instrument: string, step: number): number {
  return uniformOfKey(keyOf(seed, purpose, instrument, step), 0);
}

/** Normal with mean 0 and standard deviation 1. */
export function keyedNormal(seed: number, purpose: string, instrument: string, step: number): number {
  const key = keyOf(seed, purpose, instrument, step);
  const radius = Math.sqrt(-2 * ln(1 - uniformOfKey(key, 1)));
  return radius * cos(TWO_PI * uniformOfKey(key, 2));
}

function keyOf(seed: number, purpose: string, instrument: string, step: number): number {
  let key = mixWord(0x2545f491, seed | 0);
  key = mixWord(key, Math.floor(seed / 4294967296) | 0);
  key = mixWord(key, hashTextWord(purpose));
  key = mixWord(key, hashTextWord(instrument));
  key = mixWord(key, step | 0);
  return mixWord(key, Math.floor(step / 4294967296) | 0);
}

function uniformOfKey(key: number, draw: number): number {
  const first = avalanche(mixWord(key, 2 * draw + 1));
  const second = avalanche(mixWord(mixWord(key, 2 * draw + 2), first));
  return (first >>> 6) * TO_UNIT_HIGH + (second >>> 5) * TO_UNIT_LOW;
}
