import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';
import { wordIdSources } from '../../shared/build/wordIds';
import { languages, type Message, say, setLanguage, word } from '../../src/words/words';

describe('words', () => {
  test('a sentence comes with its placeholders filled', () => {
    expect(word('cli.unknownVerb', { name: 'lsit' })).toContain('"lsit"');
  });

  test('an id that came as data and does not exist is an error', () => {
    expect(() => say({ id: 'cli.nowhere' } as unknown as Message)).toThrow('no word "cli.nowhere"');
  });

  test('a placeholder without a value is an error', () => {
    expect(() => say({ id: 'cli.unknownVerb' })).toThrow('needs a value for {name}');
  });

  test('a value without a placeholder is an error', () => {
    expect(() => say({ id: 'cli.verbs', values: { name: 'x' } })).toThrow('has no place for {name}');
  });

  test('a value cannot bring in a placeholder of its own', () => {
    expect(word('cli.unknownVerbNear', { name: '{near}', near: 'list' })).toContain('"{near}"');
  });
});

describe('languages', () => {
  test('are the folders of shared/words, English first', () => {
    const folders = readdirSync(join(projectFolder, 'shared/words'));
    expect(languages()[0]).toBe('en');
    expect([...languages()].sort()).toEqual(folders.sort());
  });

  test('that have no folder are refused, and the one that was set stays', async () => {
    await expect(setLanguage('xx')).rejects.toThrow('no words in "xx"');
    await setLanguage('en');
    expect(word('cli.verbs')).toBe('Verbs');
  });
});

describe('generated word ids', () => {
  test('are those of shared/words/en (if not: npm run words)', () => {
    const sources = wordIdSources();
    for (const [path, source] of sources)
      expect(readFileSync(join(projectFolder, path), 'utf8')).toBe(source);
    const stale = readdirSync(join(projectFolder, 'src/words/ids')).filter(
      (name) => !sources.has(`src/words/ids/${name}`),
    );
    expect(stale).toEqual([]);
  });
});
