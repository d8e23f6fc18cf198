/**
 * Shape of shared/words/LANGUAGE/FEATURE.yaml: nested groups whose leaves are sentences. The id of a word is
 * `feature.group.key`. `{name}` in a sentence is a placeholder; what fills it is text already formatted.
 */
import { YamlError, type YamlPath, type YamlSource } from './readYaml.ts';

export interface WordGroup {
  readonly [key: string]: string | WordGroup;
}

const KEY = /^[a-zA-Z][a-zA-Z0-9]*(-[a-zA-Z0-9]+)*$/;
const PLACEHOLDER = /\{([a-z][a-zA-Z0-9]*)\}/g;

/** Throws `YamlError` at the first key or sentence that breaks the shape. */
export function checkWords(source: YamlSource): WordGroup {
  return checkGroup(source, source.data, []);
}

function checkGroup(source: YamlSource, data: unknown, path: YamlPath): WordGroup {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    throw new YamlError(source.at(path), 'word-shape', 'expected a sentence or a group of sentences');
  }
  for (const [key, value] of Object.entries(data)) {
    const here = [...path, key];
    if (!KEY.test(key)) {
      throw new YamlError(
        source.atKey(here),
        'word-key',
        `"${key}" is no word key; use letters, digits and single hyphens`,
      );
    }
    if (typeof value === 'string') checkSentence(source, value, here);
    else checkGroup(source, value, here);
  }
  return data as WordGroup;
}

function checkSentence(source: YamlSource, sentence: string, path: YamlPath): void {
  if (sentence.trim() === '') throw new YamlError(source.at(path), 'word-empty', 'the sentence is empty');
  const rest = sentence.replace(PLACEHOLDER, '');
  if (/[{}]/.test(rest)) {
    throw new YamlError(
      source.at(path),
      'word-brace',
      `a brace that is no placeholder; write {name}, small letter first`,
    );
  }
}

/** Names of the placeholders of a sentence, each once, in order of the alphabet. */
export function placeholdersOf(sentence: string): string[] {
  const names = new Set<string>();
  for (const match of sentence.matchAll(PLACEHOLDER)) names.add(match[1] as string);
  return [...names].sort();
}

/** Every sentence of a feature file under its full id. */
export function flattenWords(feature: string, group: WordGroup): Map<string, string> {
  const words = new Map<string, string>();
  const walk = (prefix: string, at: WordGroup): void => {
    for (const [key, value] of Object.entries(at)) {
      if (typeof value === 'string') words.set(`${prefix}.${key}`, value);
      else walk(`${prefix}.${key}`, value);
    }
  };
  walk(feature, group);
  return words;
}
