/** Draws of one bay in a row: each is a keyed random number, so a bay is the same on every machine and in any order. */
import { keyedUniform } from '../../numerics/keyedRandom';

export interface Draws {
  chance(share: number): boolean;
  /** A whole number, both ends included. */
  whole(least: number, most: number): number;
  pick<T>(list: readonly T[]): T;
  shuffled<T>(list: readonly T[]): T[];
}

export function createDraws(seed: number, purpose: string): Draws {
  let step = 0;
  const next = (): number => keyedUniform(seed, 'drill', purpose, step++);
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return {
    chance: (share) => next() < share,
    whole,
    pick: (list) => list[whole(0, list.length - 1)],
    shuffled(list) {
      const out = [...list];
      for (let i = out.length - 1; i > 0; i--) {
        const j = whole(0, i);
        [out[i], out[j]] = [out[j], out[i]];
      }
      return out;
    },
  };
}
