/**
 * Every sentence a person reads, by id. `word('cli.unknownVerb', { name })` gives it in the language that is set, with
 * its placeholders filled; numbers arrive already formatted. Ids and placeholders are checked by the compiler
 * (wordIds.ts is generated from shared/words/en by `npm run words`) and again here, for ids that come out of data.
 */
import { flattenWords, placeholdersOf, type WordGroup } from '../../shared/schema/words';
import { sentenceIn } from './sentence';
import type { WordId, WordParameters } from './wordIds';

export type { WordId } from './wordIds';

/** Placeholder values of the word `Id`; nothing where it has none. */
type Filling<Id extends WordId> = [WordParameters[Id]] extends [never]
  ? []
  : [values: Readonly<Record<WordParameters[Id], string>>];

/** A word as data: what the core hands to a screen, a record or the command line. */
export interface Message {
  readonly id: WordId;
  readonly values?: Readonly<Record<string, string>>;
}

/** What the page needs before anything is opened. */
const english = gather({
  ...import.meta.glob<WordGroup>('../../shared/words/en/{app,shelf,help,instrument,name}.yaml', {
    eager: true,
    import: 'default',
  }),
  ...wordsOutsideThePage(),
});
const others = import.meta.glob<WordGroup>(['../../shared/words/*/*.yaml', '!../../shared/words/en/*.yaml'], {
  import: 'default',
});

let current: Map<string, string> = english;

/** Outside a browser all is there at once; a page has the rest from `jobWords`, and does without the command line's. */
function wordsOutsideThePage(): Readonly<Record<string, WordGroup>> {
  if (!import.meta.env.SSR) return {};
  return import.meta.glob<WordGroup>('../../shared/words/en/*.yaml', { eager: true, import: 'default' });
}

/** Adds words that came later, by the path of their file. */
export function learnWords(files: Readonly<Record<string, WordGroup>>): void {
  for (const [id, sentence] of gather(files)) {
    english.set(id, sentence);
    if (!current.has(id)) current.set(id, sentence);
  }
}

function gather(files: Readonly<Record<string, WordGroup>>): Map<string, string> {
  const words = new Map<string, string>();
  for (const [path, group] of Object.entries(files)) {
    const feature = path.slice(path.lastIndexOf('/') + 1, -'.yaml'.length);
    for (const [id, sentence] of flattenWords(feature, group)) words.set(id, sentence);
  }
  return words;
}

/** Languages that have a folder, English first. */
export function languages(): string[] {
  const found = Object.keys(others).map((path) => path.split('/').at(-2) as string);
  return ['en', ...new Set(found)];
}

/** Loads a language; a sentence it lacks is taken from English. Throws `RangeError` where there is none. */
export async function setLanguage(language: string): Promise<void> {
  if (!languages().includes(language))
    throw new RangeError(`no words in "${language}"; there is ${languages()}`);
  const paths = Object.keys(others).filter((path) => path.split('/').at(-2) === language);
  const loaded = await Promise.all(paths.map(async (path) => [path, await others[path]?.()] as const));
  const own = gather(Object.fromEntries(loaded.filter((pair): pair is [string, WordGroup] => !!pair[1])));
  current = new Map([...english, ...own]);
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
  return english.has(id);
}

/** What the English sentence of `id` has places for, in order of the alphabet. */
export function placeholdersIn(id: WordId): string[] {
  return placeholdersOf(english.get(id) ?? '');
}
