/** The library that ships, proved in its first bay as the command line does it; the long run has three bays of each. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';
import type { Proof } from '../../src/prover/proof';
import { scenarios } from '../../src/session/scenario/library';

const AN_HOUR_MS = 3_600_000;
const MOST_OUTPUT = 2 ** 28;

describe('the library', () => {
  let proofs: readonly Proof[];
  let ofAll: readonly unknown[];

  beforeAll(() => {
    const cache = mkdtempSync(join(tmpdir(), 'portside-shipped-'));
    const { stdout } = spawnSync(
      process.execPath,
      ['shared/build/portside.mjs', 'prove', '--library', '--seeds', '1', '--threads', '2', '--json'],
      {
        cwd: projectFolder,
        encoding: 'utf8',
        env: { ...process.env, XDG_CACHE_HOME: cache },
        maxBuffer: MOST_OUTPUT,
      },
    );
    rmSync(cache, { recursive: true });
    ({ proofs, findings: ofAll } = JSON.parse(stdout));
  }, AN_HOUR_MS);

  const proofOf = (id: string): Proof => proofs.find(({ scenario }) => scenario === id) as Proof;

  test('holds, scenario by scenario', () => {
    expect(proofs.map(({ scenario }) => scenario)).toEqual(scenarios.map(({ data }) => data.id));
    const against = proofs.flatMap(({ scenario, findings }) =>
      findings
        .filter(({ level }) => level === 'error')
        .map(({ code, values }) => ({ scenario, code, values })),
    );
    expect(against).toEqual([]);
    expect(proofs.map(({ verdict }) => verdict)).not.toContain('refused');
  });

  test('is passed by no habit in more than a third of it', () => {
    expect(ofAll).toEqual([]);
  });

  test('is found out by who asks, wherever there is something to be found', () => {
    for (const { scenario, solved } of proofs)
      expect(solved.know === null ? null : solved.know.right, scenario).not.toEqual([]);
    const asked = proofs.filter(({ solved }) => solved.know !== null);
    expect(asked.length).toBeGreaterThan(0.9 * proofs.length);
  });

  test('has a table of suspects and the worth of hints where there is something to be found, and none elsewhere', () => {
    const clicks = proofOf('nothing-clicks');
    expect(clicks.apart?.rows.length).toBeGreaterThan(40);
    expect(clicks.worth?.hints).toHaveLength(3);
    const weighed = proofOf('weighed-in');
    expect([weighed.solved.know, weighed.apart]).toEqual([null, null]);
  });
});
