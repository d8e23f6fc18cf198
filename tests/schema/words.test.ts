import { describe, expect, test } from 'vitest';
import { readYaml } from '../../shared/schema/readYaml';
import { flattenWords, placeholdersOf } from '../../shared/schema/wordGroup';
import { checkWords } from '../../shared/schema/words';

const check = (text: string) => checkWords(readYaml('w.yaml', text));

describe('a file of words', () => {
  test('gives every sentence under its full id', () => {
    const words = flattenWords('bay', check('port:\n  cap: "Cap {size}"\nlow-side: "Low side"\n'));
    expect([...words]).toEqual([
      ['bay.port.cap', 'Cap {size}'],
      ['bay.low-side', 'Low side'],
    ]);
  });

  test('names each placeholder once, in order of the alphabet', () => {
    expect(placeholdersOf('{b} of {a}, {b}')).toEqual(['a', 'b']);
  });

  test.each([
    ['a number for a sentence', 'a: 1\n', 'w.yaml:1:4 word-shape'],
    ['a list', 'a: [b]\n', 'w.yaml:1:4 word-shape'],
    ['a key with a dot', 'a.b: c\n', 'w.yaml:1:1 word-key'],
    ['an empty sentence', 'a: ""\n', 'w.yaml:1:4 word-empty'],
    ['a stray brace', 'a: "open { only"\n', 'w.yaml:1:4 word-brace'],
  ])('refuses %s', (_, text, message) => {
    expect(() => check(text)).toThrow(message);
  });
});
