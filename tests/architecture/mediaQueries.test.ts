/** Style sheets ask for room in em or rem: whoever has text twice as large has half the room, and px would not know. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';
import { filesUnder } from './sourceFile';

/** Conditions on room in pixels, or written with min- and max-, which both hold at the edge. */
const slipsOf = (css: string): string[] =>
  (css.match(/@(?:media|container)[^{]*/g) ?? []).filter((asked) =>
    /\dpx|(?:min|max)-(?:width|height)/.test(asked),
  );

test('what it looks for it finds', () => {
  expect(
    slipsOf('@media (width <= 700px) {}\n@media (max-width: 40em) {}\n.a { max-width: 3px; }'),
  ).toHaveLength(2);
  expect(slipsOf('@media (width <= 40em) and (height > 30em) {}\n@container (width <= 5rem) {}')).toEqual([]);
});

test('no style sheet asks for room in pixels', () => {
  const sheets = filesUnder(['src'], /\.css$/);
  expect(sheets.length).toBeGreaterThan(20);
  const found = sheets.flatMap((path) =>
    slipsOf(readFileSync(join(projectFolder, path), 'utf8')).map((asked) => `${path}: ${asked.trim()}`),
  );
  expect(found).toEqual([]);
});
