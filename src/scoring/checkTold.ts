/** The words a rule is told in: a sentence for every way it can go, with a place for all that the rule quotes and no other. */
import type { Rule } from '../../shared/schema/rubric';
import { measureList } from '../session/record/measures';
import { isWordId, placeholdersIn, type WordId } from '../words/words';

/** What is wrong with them; nothing where all is well. */
export type Untold =
  | { readonly kind: 'unspoken'; readonly ways: readonly string[] }
  | { readonly kind: 'unequal'; readonly quotes: readonly string[]; readonly places: readonly string[] };

/** What every sentence has. */
const ALWAYS = ['time'];

export function checkTold(rule: Rule): Untold | null {
  const wordOf = (way: string): WordId | undefined =>
    [`rules.${rule.id}.${way}`, `rules.${rule.id}.told`].find(isWordId);
  const unspoken = waysOf(rule).filter((way) => wordOf(way) === undefined);
  if (unspoken.length > 0) return { kind: 'unspoken', ways: unspoken };
  const quotes = Object.keys(rule.quotes).sort();
  for (const id of [...waysOf(rule), 'advised'].map(wordOf)) {
    const all = id === undefined ? [] : placeholdersIn(id);
    const places = all.filter((name) => !ALWAYS.includes(name));
    const isComplete = ALWAYS.every((name) => all.includes(name));
    if (id !== undefined && !(isComplete && places.join() === quotes.join()))
      return { kind: 'unequal', quotes, places: isComplete ? places : all };
  }
  return null;
}

/** A rule is idle where what it is about never came up, or was never worked out. */
function waysOf(rule: Rule): readonly string[] {
  const isWeighed =
    'outcome' in rule && measureList.some(({ id, weighed }) => id === rule.outcome.measure && weighed);
  const canBeIdle = rule.needs !== undefined || rule.asked !== undefined || 'before' in rule || isWeighed;
  return canBeIdle ? ['kept', 'broken', 'idle'] : ['kept', 'broken'];
}
