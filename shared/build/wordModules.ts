/**
 * Vite plugin: the texts a person reads, one module a language and lot, so that a page fetches one language.
 *
 * `virtual:words` names the languages and gets a lot of words; what a language lacks is put in from English here.
 * `virtual:told` gets what is told of scenarios: all of a shelf, one of a job, one of its end, and the law of places.
 */
import type { Plugin } from 'vite';
import { jsonModule } from './jsonModule.ts';
import { ENGLISH, LANGUAGES, scenarioIds, wordsOf } from './languageFiles.ts';
import { lawOf, toldAfter, toldOf, toldOnShelf } from './toldTexts.ts';
import { LOTS, type Lot } from './wordLots.ts';

const MODULE = /^virtual:(words|told|after|law)(\/[\w/-]+)?$/;

export function wordModules(): Plugin {
  return {
    name: 'portside:words',
    resolveId: { filter: { id: MODULE }, handler: (id) => `\0${id}` },
    load: {
      filter: { id: /^\0virtual:(words|told|after|law)(\/|$)/ },
      handler: (id, options) => ({
        code: codeOf(id.slice('\0virtual:'.length), options?.ssr === true),
        moduleType: 'js',
      }),
    },
  };
}

/** The last part of a name is the name of its chunk. No page has the command line's words. */
function codeOf(name: string, isOutsideThePage: boolean): string {
  const lots = LOTS.filter((lot) => lot !== 'line' || isOutsideThePage);
  if (name === 'words') return indexOf(lots, (language, lot) => `words/${language}/words-${language}-${lot}`);
  if (name === 'told') return toldIndex();
  const [kind, language, chunk] = name.split('/');
  const what = chunk.slice(`${kind}-${language}-`.length);
  if (kind === 'words') return jsonModule(wordsOf(language, what as Lot)).code;
  if (kind === 'law') return jsonModule(lawOf(language)).code;
  if (kind === 'after') return jsonModule(toldAfter(language, what)).code;
  return jsonModule(what === 'shelf' ? toldOnShelf(language) : toldOf(language, what)).code;
}

/** English law and ends of jobs come with their own files. */
function toldIndex(): string {
  const told = (language: string, id: string): string => `told/${language}/told-${language}-${id}`;
  const after = (language: string, id: string): string => `after/${language}/after-${language}-${id}`;
  const others = LANGUAGES.filter((language) => language !== ENGLISH);
  const ofEach = (languages: readonly string[], path: typeof told): string =>
    byKey(languages, (language) => byKey(scenarioIds(), (id) => fetched(path(language, id))));
  return [
    exported(
      'onShelf',
      byKey(LANGUAGES, (language) => fetched(told(language, 'shelf'))),
    ),
    exported(
      'law',
      byKey(others, (language) => fetched(`law/${language}/law-${language}-all`)),
    ),
    exported('ofJob', ofEach(LANGUAGES, told)),
    exported('afterJob', ofEach(others, after)),
  ].join('\n');
}

function indexOf(lots: readonly string[], path: (language: string, lot: string) => string): string {
  return `export default ${byKey(LANGUAGES, (language) => byKey(lots, (lot) => fetched(path(language, lot))))};`;
}

const exported = (name: string, value: string): string => `export const ${name} = ${value};`;
const fetched = (path: string): string => `() => import('virtual:${path}').then((module) => module.default)`;

function byKey(keys: readonly string[], value: (key: string) => string): string {
  return `{ ${keys.map((key) => `${JSON.stringify(key)}: ${value(key)}`).join(', ')} }`;
}
