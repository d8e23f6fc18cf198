/**
 * The cause that a text speaks of most: first by how much of its name stands there, then by how often, where a word counts
 * for less the more causes share it. Words are told by their first letters, so that "leaking" is a leak; those of every
 * sentence do not count.
 */
import { causeWords } from './causeWords';

const STEM = 5;
const SHORTEST = 3;
const OFTEN = 0.01;
const OF_EVERY_SENTENCE: ReadonlySet<string> = new Set(
  'the and for not its too out one right los las del una con por que para'.split(' '),
);

/** Of two of which as much is said, the first in the list. */
export function causeInText(text: string, causes: readonly string[], language: string): string {
  const inText = new Map<string, number>();
  for (const stem of stemsOf(text)) inText.set(stem, (inText.get(stem) ?? 0) + 1);
  const stems = causes.map((cause) => [...new Set(stemsOf(causeWords(cause, language)))]);
  const shared = new Map<string, number>();
  for (const stem of stems.flat()) shared.set(stem, (shared.get(stem) ?? 0) + 1);
  const worth = (own: readonly string[]): number =>
    own.reduce((sum, stem) => {
      const times = inText.get(stem) ?? 0;
      return sum + (times > 0 ? 1 + OFTEN * times : 0) / (shared.get(stem) ?? 1);
    }, 0) / own.length;
  const scores = stems.map(worth);
  return causes[scores.indexOf(Math.max(...scores))];
}

const stemsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((one) => one.length >= SHORTEST && !OF_EVERY_SENTENCE.has(one))
    .map((one) => one.slice(0, STEM));
