/** The library that ships, proved with three bays each, as the command line does it with two threads. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';
import type { ProofFinding } from '../../src/prover/proof';
import { scenarios } from '../../src/session/scenario/library';

/** It takes most of an hour on two cores of its own; others may be at work too. */
const THREE_HOURS_MS = 3 * 3_600_000;
const cache = mkdtempSync(join(tmpdir(), 'portside-library-'));
afterAll(() => rmSync(cache, { recursive: true }));

interface Printed {
  readonly proofs: readonly {
    readonly scenario: string;
    readonly verdict: string;
    readonly findings: readonly (ProofFinding & { readonly message: string })[];
  }[];
  readonly findings: readonly { readonly message: string }[];
}

function library(): Printed {
  const { stdout } = spawnSync(
    process.execPath,
    ['shared/build/portside.mjs', 'prove', '--library', '--seeds', '3', '--full', '--threads', '2', '--json'],
    {
      cwd: projectFolder,
      encoding: 'utf8',
      env: { ...process.env, XDG_CACHE_HOME: cache },
      maxBuffer: 2 ** 28,
    },
  );
  return JSON.parse(stdout);
}

test(
  'every scenario holds, no habit passes a third of them, and the cache gives the same',
  () => {
    const printed = library();
    const against = printed.proofs.flatMap(({ scenario, findings }) =>
      findings.filter(({ level }) => level === 'error').map(({ message }) => `${scenario}: ${message}`),
    );
    expect(against).toEqual([]);
    expect(printed.findings.map(({ message }) => message)).toEqual([]);
    expect(printed.proofs).toHaveLength(scenarios.length);
    expect(library()).toEqual(printed);
  },
  THREE_HOURS_MS,
);
