/**
 * What shared/words/LANGUAGE/FEATURE.yaml holds: nested groups whose leaves are sentences. The id of a word is
 * `feature.group.key`. `{name}` in a sentence is a placeholder; what fills it is text already formatted.
 */
export interface WordGroup {
  readonly [key: string]: string | WordGroup;
}

export const PLACEHOLDER = /\{([a-z][a-zA-Z0-9]*)\}/g;

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
