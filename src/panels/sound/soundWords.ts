/** A caption for every noise. What runs all the time stands together in one line. */
import { type WordId, word } from '../../words/words';
import type { Caption } from './captionBook';
import type { Noise } from './lastingNow';
import type { LastingSound, MomentSound } from './soundIds';

export const soundName = (id: LastingSound | MomentSound): string =>
  word(`panels.sound.name.${id}` satisfies WordId as 'panels.sound.name.engine');

const STEADY: readonly LastingSound[] = ['engine', 'compressor', 'fan', 'blower', 'pump', 'recovery'];

export function steadyWords(noises: readonly Noise[]): string | null {
  const names = noises.filter(({ id }) => STEADY.includes(id)).map(({ id }) => soundName(id));
  return names.length === 0 ? null : word('panels.sound.running', { what: names.join(', ') });
}

export const lastingWords = (noises: readonly Noise[]): string[] =>
  noises.filter(({ id }) => !STEADY.includes(id)).map(({ id }) => soundName(id));

export const momentWords = ({ id, count }: Caption): string =>
  count === 1 ? soundName(id) : word('panels.sound.times', { what: soundName(id), count: String(count) });
