/**
 * Source text of the typed word ids: src/words/ids/FEATURE.ts, one for each file of shared/words/en, and
 * src/words/wordIds.ts that joins them. An id maps to the names of its placeholders.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readYaml } from '../schema/readYaml.ts';
import { flattenWords, placeholdersOf } from '../schema/wordGroup.ts';
import { checkWords } from '../schema/words.ts';
import { projectFolder } from './folders.ts';

const ENGLISH = 'shared/words/en';

/** Path, relative to the project, -> what it has to hold. */
export function wordIdSources(): Map<string, string> {
  const features = readdirSync(join(projectFolder, ENGLISH))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => name.slice(0, -'.yaml'.length))
    .sort();
  const sources = new Map<string, string>([['src/words/wordIds.ts', joinedSource(features)]]);
  for (const feature of features) sources.set(`src/words/ids/${feature}.ts`, featureSource(feature));
  return sources;
}

function featureSource(feature: string): string {
  const file = `${ENGLISH}/${feature}.yaml`;
  const group = checkWords(readYaml(file, readFileSync(join(projectFolder, file), 'utf8')));
  const ids = [...flattenWords(feature, group)].map(([id, sentence]) => {
    const names = placeholdersOf(sentence).map((name) => `'${name}'`);
    return `  '${id}': ${names.join(' | ') || 'never'};`;
  });
  const header = `/** Generated from ${file} by \`npm run words\`; do not edit. */`;
  return [header, `export interface ${typeName(feature)} {`, ...ids, '}', ''].join('\n');
}

function joinedSource(features: readonly string[]): string {
  return [
    '/** Generated from shared/words/en by `npm run words`; do not edit. Word id -> names of its placeholders. */',
    ...features.map((feature) => `import type { ${typeName(feature)} } from './ids/${feature}';`),
    '',
    'export interface WordParameters',
    `  extends ${features.map(typeName).join(',\n    ')} {}`,
    '',
    'export type WordId = keyof WordParameters;',
    '',
  ].join('\n');
}

const typeName = (feature: string): string => `${feature[0]?.toUpperCase()}${feature.slice(1)}Words`;
