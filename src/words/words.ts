/**
 * Every sentence a person reads, by id. `word('cli.unknownVerb', { name })` gives it in the language that is set, with
 * its placeholders filled; numbers arrive already formatted. Ids and placeholders are checked by the compiler
 * (wordIds.ts is generated from shared/words/en by `npm run words`) and again here, for ids that come out of data.
 */
import lots from 'virtual:words';
import { flattenWords, placeholdersOf, type WordGroup } from '../../shared/schema/wordGroup';
import { sentenceIn } from './sentence';
import type { WordId, WordParameters } from './wordIds';

export type { WordId } from './wordIds';

const ENGLISH = 'en';
/** In which lots words are fetched (shared/build/wordLots.ts). */
const ALL = ['page', 'job', 'findings', 'inside', 'written', 'pages', 'workshop', 'line'] as const;
export type Lot = (typeof ALL)[number];

/** Placeholder values of the word `Id`; nothing where it has none. */
type Filling<Id extends WordId> = [WordParameters[Id]] extends [never]
  ? []
  : [values: Readonly<Record<WordParameters[Id], string>>];

/** A word as data: what the core hands to a screen, a record or the command line. */
export interface Message {
  readonly id: WordId;
  readonly values?: Readonly<Record<string, string>>;
}

/** Sentence by id, of the language that is set: all that has been fetched so far. */
let current = wordsOutsideThePage();
let language = ENGLISH;
const fetched = new Set<Lot>();

/** Outside a browser all English is there at once; a page fetches lots of its own language. */
function wordsOutsideThePage(): Map<string, string> {
  if (!import.meta.env.SSR) return new Map();
  const files = import.meta.glob<WordGroup>('../../shared/words/en/*.yaml', {
    eager: true,
    import: 'default',
  });
  const pairs = Object.entries(files).flatMap(([path, group]) => [
    ...flattenWords(path.slice(path.lastIndexOf('/') + 1, -'.yaml'.length), group),
  ]);
  return new Map(pairs);
}

/** Languages that have a folder, English first. */
export const languages = (): string[] => Object.keys(lots);

/** The language that is set. */
export const spokenLanguage = (): string => language;

/**
 * Sets a language; what had been fetched of the one before is fetched of this one. What it lacks is in its lots from
 * English. Throws `RangeError` where there is none.
 */
export async function setLanguage(wished: string): Promise<void> {
  if (!languages().includes(wished)) throw new RangeError(`no words in "${wished}"; there is ${languages()}`);
  const wanted: readonly Lot[] = import.meta.env.SSR ? ALL : [...fetched];
  const loaded = await Promise.all(wanted.map((lot) => lots[wished][lot]()));
  // a lot of the language before may have come in the meantime
  if (!import.meta.env.SSR && fetched.size > wanted.length) return setLanguage(wished);
  language = wished;
  current = new Map(loaded.flatMap((words) => Object.entries(words)));
}

/** Fetches a lot of words of the language that is set, once. */
export async function learnWords(lot: Lot): Promise<void> {
  if (import.meta.env.SSR || fetched.has(lot)) return;
  const asked = language;
  const words = await lots[asked][lot]();
  fetched.add(lot);
  if (asked !== language) return setLanguage(language);
  for (const [id, sentence] of Object.entries(words)) current.set(id, sentence);
}

/** The sentence of `id` with its placeholders filled. */
export function word<Id extends WordId>(id: Id, ...values: Filling<Id>): string {
  return say(values[0] ? { id, values: values[0] } : { id });
}

/** The sentence of a message that came as data. Throws `RangeError` for an unknown id or a placeholder left empty. */
export function say(message: Message): string {
  const sentence = current.get(message.id);
  if (sentence === undefined) throw new RangeError(`no word "${message.id}"`);
  return sentenceIn(message.id, sentence, message.values ?? {});
}

export function isWordId(id: string): id is WordId {
  return current.has(id);
}

/** What the sentence of `id` has places for, in order of the alphabet. */
export function placeholdersIn(id: WordId): string[] {
  return placeholdersOf(current.get(id) ?? '');
}
