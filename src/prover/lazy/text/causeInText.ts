/**
 * The cause whose words stand in a text most. A word counts for less the more causes share it, and is told by its first
 * letters, so that "leaking" is a leak.
 */
import { causeWords } from './causeWords';

const STEM = 5;
const SHORTEST = 3;

/** Of two that are as often there, the first in the list. */
export function causeInText(text: string, causes: readonly string[], language: string): string {
  const inText = new Map<string, number>();
  for (const stem of stemsOf(text)) inText.set(stem, (inText.get(stem) ?? 0) + 1);
  const stems = causes.map((cause) => [...new Set(stemsOf(causeWords(cause, language)))]);
  const shared = new Map<string, number>();
  for (const stem of stems.flat()) shared.set(stem, (shared.get(stem) ?? 0) + 1);
  const worth = (own: readonly string[]): number =>
    own.reduce((sum, stem) => sum + (inText.get(stem) ?? 0) / (shared.get(stem) ?? 1), 0) / own.length;
  const scores = stems.map(worth);
  return causes[scores.indexOf(Math.max(...scores))];
}

const stemsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((one) => one.length >= SHORTEST)
    .map((one) => one.slice(0, STEM));
