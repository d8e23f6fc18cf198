import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';
import { direction } from './rules/direction';
import { fileSize } from './rules/fileSize';
import { insideProject } from './rules/insideProject';
import { noLeftovers } from './rules/noLeftovers';
import { noScreen } from './rules/noScreen';
import { packages } from './rules/packages';
import { sameBits } from './rules/sameBits';
import { textOnly } from './rules/textOnly';
import { tradeUnits } from './rules/tradeUnits';
import { wordsInFiles } from './rules/wordsInFiles';
import { wordsLater } from './rules/wordsLater';
import { filesUnder, parse, type Rule, show, sourceFiles } from './sourceFile';

const SOURCE_RULES: readonly Rule[] = [
  direction,
  packages,
  sameBits,
  noScreen,
  tradeUnits,
  textOnly,
  wordsInFiles,
  wordsLater,
];
const TREE_RULES: readonly Rule[] = [fileSize, insideProject, noLeftovers];

describe('the tree', () => {
  const files = sourceFiles(['src', 'shared', 'tests']);

  test('is not empty where the rules look', () => {
    expect(files.length).toBeGreaterThan(20);
  });

  test.each([...SOURCE_RULES, ...TREE_RULES])('keeps the rule: $name', ({ check }) => {
    expect(files.flatMap(check).map(show)).toEqual([]);
  });

  test('keeps style sheets and data within the size of a file', () => {
    const others = filesUnder(['src'], /\.(css|html)$/).map((path) => ({
      path,
      text: readFileSync(join(projectFolder, path), 'utf8'),
    }));
    const empty = parse('src/app/empty.ts', '').tree;
    expect(others.flatMap(({ path, text }) => fileSize.check({ path, text, tree: empty })).map(show)).toEqual(
      [],
    );
  });
});
