import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';

function portside(...args: string[]): { status: number | null; stdout: string; stderr: string } {
  const command = ['shared/build/portside.mjs', ...args];
  return spawnSync(process.execPath, command, { cwd: projectFolder, encoding: 'utf8' });
}

describe('the command line as it is run', () => {
  test('builds itself without a word on standard output, and is then there at once', () => {
    expect(portside('no-such-verb')).toMatchObject({ status: 2, stdout: '' });
    expect(portside('no-such-verb').stderr).not.toContain('building');
  });

  test('gives the same bytes twice', () => {
    const first = portside('--help');
    expect(first.status).toBe(0);
    expect(portside('--help').stdout).toBe(first.stdout);
  });
});
