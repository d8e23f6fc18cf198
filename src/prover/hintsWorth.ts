/**
 * What each hint gives away: causes that its words name, and what would be believed of the car's own trouble once the tests
 * of this bench were read that it points to, at what that car shows. A cause is named where every word of its title stands in
 * one sentence of the hint, each told by its first letters; tests are pointed to by `hintPointers`.
 */
import { exp } from '../numerics/exp';
import { ln } from '../numerics/ln';
import { plantOptions } from '../session/scenario/plantOptions';
import type { Scenario } from '../session/scenario/scenario';
import { causesOf, priorsOf } from '../suspects/causes';
import { logMean, logSum } from '../suspects/likelihood';
import type { ApartTable, TestOf } from './apartTable';
import { logOdds } from './forecast/logOdds';
import type { Probe } from './forecast/probe';
import { hintPointers } from './hintPointers';
import { causeWords } from './lazy/text/causeWords';
import type { HintWorth } from './proof';

const STEM = 4;
const SHORTEST = 3;
/** What a title has of words that name nothing, in the languages that scenarios are told in. */
const IDLE: ReadonlySet<string> = new Set(['the', 'too', 'not', 'its', 'los', 'las', 'del', 'con', 'por']);

/** `own`: the car's trouble, as suspects are called. */
export function hintsWorth(
  { data }: Scenario,
  table: ApartTable,
  own: readonly string[],
): readonly HintWorth[] {
  const causes = causesOf(table.rows);
  const { pressurePa } = plantOptions(data, table.seed).weather;
  const shareOf = (tests: readonly number[]): number => ownShare(table, own, tests, pressurePa);
  return data.hints.map((hint, at) => {
    const sentences = hint.split(/[.!?;]/).map(stemsOf);
    const names = causes.filter((cause) => {
      const title = stemsOf(causeWords(cause, data.language).slice(cause.length + 1));
      return title.length > 0 && sentences.some((said) => title.every((stem) => said.includes(stem)));
    });
    const tests = pointedTo(hint, table);
    return {
      level: at + 1,
      names,
      tests: tests.map((test) => table.tests[test].id),
      shareBefore: shareOf([]),
      shareAfter: shareOf(tests),
    };
  });
}

const stemsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((one) => one.length >= SHORTEST && !IDLE.has(one))
    .map((one) => one.slice(0, STEM));

function pointedTo(hint: string, { tests }: ApartTable): readonly number[] {
  const text = hint.toLowerCase();
  const channels = hintPointers.filter(([, phrases]) => phrases.some((phrase) => text.includes(phrase)));
  return tests.flatMap(({ id, isOnBench }, at) =>
    isOnBench && channels.some(([channel]) => id.startsWith(channel)) ? [at] : [],
  );
}

const kindOf = ({ unit, tool }: TestOf) => ({ unit, tool }) as Pick<Probe, 'unit' | 'tool'>;

/** The mean over the rows of the car's own trouble, each being the car in turn. */
function ownShare(
  { tests, rows }: ApartTable,
  own: readonly string[],
  read: readonly number[],
  atmospherePa: number,
): number {
  const causes = causesOf(rows);
  const priors = priorsOf(causes);
  const cars = rows.filter(({ cause }) => own.includes(cause));
  const shares = cars.map((car) => {
    const logs = causes.map((cause, at) => {
      const likelihoods = rows
        .filter((row) => row.cause === cause)
        .map((row) =>
          read.reduce((sum, test) => {
            const shown = car.shows[test];
            return shown === null
              ? sum
              : sum + logOdds(kindOf(tests[test]), shown, row.shows[test] ?? Number.NaN, atmospherePa);
          }, 0),
        );
      return ln(priors[at]) + logMean(likelihoods);
    });
    const all = logSum(logs);
    return causes.reduce((sum, cause, at) => (own.includes(cause) ? sum + exp(logs[at] - all) : sum), 0);
  });
  return cars.length === 0 ? 0 : shares.reduce((sum, share) => sum + share, 0) / cars.length;
}
