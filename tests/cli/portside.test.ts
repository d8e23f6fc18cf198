import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
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

  test.runIf(existsSync('/dev/full'))('says in a line that a full disk takes no answer', () => {
    const full = openSync('/dev/full', 'w');
    const { status, stderr } = spawnSync(process.execPath, ['shared/build/portside.mjs', '--help'], {
      cwd: projectFolder,
      encoding: 'utf8',
      stdio: ['ignore', full, 'pipe'],
    });
    closeSync(full);
    expect([status, stderr]).toEqual([2, 'stdout cannot be written: ENOSPC\n']);
  });
});
