/** Two of the scenarios that ship, proved as a shell would, in one bay; the long run has all of them in three. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';
import type { Proof } from '../../src/prover/proof';

const HANDFUL = ['nothing-clicks', 'weighed-in'];
const TEN_MINUTES_MS = 600_000;

test('a handful of the library holds; what was to be diagnosed was found by asking', {
  timeout: TEN_MINUTES_MS,
}, () => {
  const cache = mkdtempSync(join(tmpdir(), 'portside-handful-'));
  const { stdout } = spawnSync(
    process.execPath,
    ['shared/build/portside.mjs', 'prove', ...HANDFUL, '--seeds', '1', '--threads', '2', '--json'],
    { cwd: projectFolder, encoding: 'utf8', env: { ...process.env, XDG_CACHE_HOME: cache } },
  );
  rmSync(cache, { recursive: true });
  const [asked, weighed]: readonly Proof[] = JSON.parse(stdout).proofs;
  expect([asked, weighed].map(({ scenario, verdict }) => [scenario, verdict])).toEqual(
    HANDFUL.map((id) => [id, 'holds']),
  );
  expect(asked.solved.know?.right).toEqual([1]);
  expect(asked.apart?.rows.length).toBeGreaterThan(40);
  expect(asked.worth?.hints).toHaveLength(3);
  expect([weighed.solved.know, weighed.apart]).toEqual([null, null]);
});
