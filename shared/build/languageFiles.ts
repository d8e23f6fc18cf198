/** Files of the languages: which there are, and the words of a lot, with English where a language has none. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readYaml } from '../schema/readYaml.ts';
import { flattenWords } from '../schema/wordGroup.ts';
import { checkWords } from '../schema/words.ts';
import { projectFolder } from './folders.ts';
import { type Lot, lotOf } from './wordLots.ts';

const WORDS = 'shared/words';
export const ENGLISH = 'en';

/** English first. */
export const LANGUAGES: readonly string[] = [
  ENGLISH,
  ...readdirSync(join(projectFolder, WORDS))
    .filter((name) => name !== ENGLISH)
    .sort(),
];

export const scenarioIds = (): string[] => idsIn('scenarios');

/** Names of the YAML files of a folder, without their ending. */
export function idsIn(folder: string): string[] {
  const path = join(projectFolder, folder);
  if (!existsSync(path)) return [];
  return readdirSync(path)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => name.slice(0, -'.yaml'.length))
    .sort();
}

export const textOf = (file: string): string => readFileSync(join(projectFolder, file), 'utf8');

/** Sentence by id. Throws `YamlError`. */
export function wordsOf(language: string, lot: Lot): Record<string, string> {
  const own = language === ENGLISH ? {} : wordsIn(language, lot);
  return { ...wordsIn(ENGLISH, lot), ...own };
}

function wordsIn(language: string, lot: Lot): Record<string, string> {
  const features = idsIn(`${WORDS}/${language}`).filter((feature) => lotOf(feature) === lot);
  return Object.assign({}, ...features.map((feature) => Object.fromEntries(featureWords(language, feature))));
}

/** Throws `YamlError`. */
export function featureWords(language: string, feature: string): Map<string, string> {
  const file = `${WORDS}/${language}/${feature}.yaml`;
  return flattenWords(feature, checkWords(readYaml(file, textOf(file))));
}
