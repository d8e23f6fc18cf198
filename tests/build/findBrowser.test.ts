import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, describe, expect, test, vi } from 'vitest';
import {
  type Candidate,
  chromiumSources,
  firstThatAnswers,
  onPath,
  type Source,
} from '../support/findBrowser';

const folder = mkdtempSync(join(tmpdir(), 'portside-find-'));
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => vi.unstubAllEnvs());

/** A program that stands in for a browser. */
function program(name: string, script: string): Candidate {
  const executablePath = join(folder, name);
  writeFileSync(executablePath, `#!/bin/sh\n${script}\n`);
  chmodSync(executablePath, 0o755);
  return { executablePath, args: [], env: {}, from: name };
}

const answers = program('answers', 'echo "Browser 143.0.1"');
const fails = program('fails', 'echo "Browser 143.0.1"; exit 1');
const silent = program('silent', 'exit 0');
const wantsLibrary = program('wantsLibrary', '[ "$LD_LIBRARY_PATH" = here ] && echo "Browser 9.1"');

async function find(...sources: Source['look'][]): Promise<{ found: string | undefined; notes: string[] }> {
  const notes: string[] = [];
  const named = sources.map((look, index) => ({ from: `source ${index}`, look }));
  const browser = await firstThatAnswers(named, (line) => notes.push(line));
  return { found: browser?.version, notes };
}

describe('finding a browser', () => {
  test('takes the first that answers --version, not the first that is there', async () => {
    const { found, notes } = await find(
      () => [fails, silent],
      () => [answers],
    );
    expect(found).toBe('Browser 143.0.1');
    expect(notes).toHaveLength(2);
  });

  test('asks each candidate with the environment it will run in', async () => {
    const { found } = await find(() => [wantsLibrary, { ...wantsLibrary, env: { LD_LIBRARY_PATH: 'here' } }]);
    expect(found).toBe('Browser 9.1');
  });

  test('goes on where a source fails, and says why', async () => {
    const { found, notes } = await find(
      () => {
        throw new Error('the download failed');
      },
      async () => [answers],
    );
    expect(found).toBe('Browser 143.0.1');
    expect(notes).toEqual(['source 0: the download failed']);
  });

  test('looks no further once one is found', async () => {
    const later = vi.fn(() => [answers]);
    await find(() => [answers], later);
    expect(later).not.toHaveBeenCalled();
  });

  test('finds nothing without a word of its own', async () => {
    expect(await find(() => [])).toEqual({ found: undefined, notes: [] });
  });

  test('looks in a fixed order: what is named, what is there, what can be had', () => {
    expect(chromiumSources.map(({ from }) => from)).toEqual([
      ...['PORTSIDE_BROWSER', 'installed', 'playwright cache', 'playwright download', 'packed', 'apt'],
    ]);
  });

  test('takes the one named by the environment first', async () => {
    vi.stubEnv('PORTSIDE_BROWSER', answers.executablePath);
    const browser = await firstThatAnswers(chromiumSources, () => undefined);
    expect(browser).toMatchObject({ from: 'PORTSIDE_BROWSER', version: 'Browser 143.0.1' });
  });

  test('looks for every name in every folder of PATH', () => {
    vi.stubEnv('PATH', '/a:/b');
    expect(onPath(['x', 'y'])).toEqual(['/a/x', '/b/x', '/a/y', '/b/y']);
  });
});
