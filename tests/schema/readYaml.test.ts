import { describe, expect, test } from 'vitest';
import { readYaml } from '../../shared/schema/readYaml';

const read = (text: string) => readYaml('a.yaml', text);

describe('reading YAML', () => {
  test('gives plain data by the core schema of version 1.2', () => {
    const { data } = read('on: yes\nzeros: 010\nhex: 0x10\nempty:\nlist: [1, 2.5, true]\n');
    expect(data).toEqual({ on: 'yes', zeros: 10, hex: 16, empty: null, list: [1, 2.5, true] });
  });

  test('knows where a value and its key stand', () => {
    const source = read('vehicle: x\nfaults:\n  - id: leak\n    severity: 0.4\n');
    expect(source.at(['faults', 0, 'severity'])).toBe('a.yaml:4:15');
    expect(source.atKey(['faults', 0, 'severity'])).toBe('a.yaml:4:5');
  });

  test('knows them where lines end in a carriage return alone, or in both', () => {
    for (const end of ['\r', '\r\n']) {
      const source = read(`# a lesson${end}vehicle: x${end}faults:${end}  - id: leak${end}`);
      expect(source.data).toEqual({ vehicle: 'x', faults: [{ id: 'leak' }] });
      expect(source.atKey(['faults', 0, 'id'])).toBe('a.yaml:4:5');
      expect(() => read(`a: 1${end}b: 2${end}a: 3${end}`)).toThrow('a.yaml:3:1 duplicate-key');
    }
  });

  test('says the nearest ancestor where the node is missing', () => {
    expect(read('faults:\n  - id: leak\n').at(['faults', 0, 'severity', 'deep'])).toBe('a.yaml:2:5');
  });

  test.each([
    ['a key twice', 'a: 1\nb: 2\na: 3\n', 'a.yaml:3:1 duplicate-key'],
    ['a line indented too far', 'a: 1\n  b: 2\n', 'a.yaml:2:3 block-as-implicit-key indented too far'],
    ['an unknown tag', 'a: !thing 1\n', 'a.yaml:1:4 tag-resolve-failed'],
    ['a second document', 'a: 1\n---\nb: 2\n', 'a.yaml:2:1 second-document'],
    ['an infinite number', 'a: .inf\n', 'a.yaml:1:4 not-finite'],
    ['a key that is no text', '1: a\n', 'a.yaml:1:1 key-not-text'],
    ['a key that would reach the prototype', '__proto__: {a: 1}\n', 'a.yaml:1:1 key-not-allowed'],
    ['an empty file', '', 'a.yaml:1:1 empty'],
    ['a file that only says null', '~\n', 'a.yaml:1:1 empty'],
    ['a file that begins a document and ends', '---\n', 'a.yaml:1:1 empty'],
    [
      'an alias, of which a few lines could unfold into millions',
      'a: &a [x]\nb: [*a, *a]\n',
      'a.yaml:1:7 alias',
    ],
  ])('refuses %s and says where', (_, text, message) => {
    expect(() => read(text)).toThrow(message);
  });
});
