/**
 * Shape of shared/words/LANGUAGE/FEATURE.yaml (wordGroup.ts), checked with the place of whatever breaks it.
 */
import { YamlError, type YamlPath, type YamlSource } from './readYaml.ts';
import { PLACEHOLDER, type WordGroup } from './wordGroup.ts';

const KEY = /^[a-zA-Z][a-zA-Z0-9]*(-[a-zA-Z0-9]+)*$/;

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
