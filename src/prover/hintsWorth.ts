/**
 * What each hint gives away: the causes that its words name, as far as tests could tell them here. A cause is named where
 * every word of its title stands in one sentence of the hint, each told by its first letters.
 */
import type { Scenario } from '../session/scenario/scenario';
import type { ApartTable } from './apartTable';
import { causeWords } from './lazy/text/causeWords';
import type { HintWorth } from './proof';

const STEM = 4;
const SHORTEST = 3;
/** What a title has of words that name nothing, in the languages that scenarios are told in. */
const IDLE: ReadonlySet<string> = new Set(['the', 'too', 'not', 'its', 'los', 'las', 'del', 'con', 'por']);

export function hintsWorth({ data }: Scenario, { rows }: ApartTable): readonly HintWorth[] {
  const causes = [...new Set(rows.map(({ cause }) => cause))];
  return data.hints.map((hint, at) => {
    const sentences = hint.split(/[.!?;]/).map(stemsOf);
    const names = causes.filter((cause) => {
      const own = stemsOf(titleOf(cause, data.language));
      return own.length > 0 && sentences.some((said) => own.every((stem) => said.includes(stem)));
    });
    return { level: at + 1, names };
  });
}

/** Without the id, which stands before it. */
const titleOf = (cause: string, language: string): string =>
  causeWords(cause, language).slice(cause.length + 1);

const stemsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((one) => one.length >= SHORTEST && !IDLE.has(one))
    .map((one) => one.slice(0, STEM));
