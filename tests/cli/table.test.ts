/** Tables of the command line: aligned, and what is long goes on in its own column. */
import { expect, it } from 'vitest';
import { tableText } from '../../src/cli/table';

it('aligns its columns and marks where the headings end', () => {
  expect(
    tableText(
      ['id', 'what'],
      [
        ['a', 'one thing'],
        ['longer', ''],
      ],
    ),
  ).toBe('id      what\n------  ---------\na       one thing\nlonger\n');
});

it('goes on below in the same column, a number with its unit, a word that is too long on its own', () => {
  const long = 'what goes on and on and on 100\u00a0g';
  const [, , first, second, ...more] = tableText(['id', 'what', 'cars'], [['a', long, 'every']]).split('\n');
  expect(first).toMatch(/^a +what goes on and on and on +every$/);
  expect(second.trim()).toBe('100 g');
  expect(second.indexOf('100')).toBe(first.indexOf('what'));
  expect(more).toEqual(['']);
  const word = 'x'.repeat(60);
  expect(tableText(['id', 'cars'], [[word, 'one']])).toContain(`${word}  one\n`);
});

it('keeps the lines that a cell has', () => {
  expect(tableText(['id', 'may'], [['a', 'ONE: on\nTWO: off']])).toContain('a   ONE: on\n    TWO: off\n');
});
