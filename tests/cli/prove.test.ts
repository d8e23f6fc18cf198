import { spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { projectFolder } from '../../shared/build/folders';
import { jobCache } from '../../src/cli/prove/jobCache';
import type { JobRunner } from '../../src/cli/prove/jobRunner';
import { proveScenario } from '../../src/cli/prove/proveScenario';
import prove from '../../src/cli/verbs/prove';
import { jobsOf } from '../../src/prover/jobs';
import { scenarioById } from '../../src/session/scenario/library';
import { callVerb } from '../support/callVerb';
import { firstResults } from '../support/plantedProof';

const scratch = mkdtempSync(join(tmpdir(), 'portside-prove-'));
const before = process.env.XDG_CACHE_HOME;
afterAll(() => {
  if (before === undefined) delete process.env.XDG_CACHE_HOME;
  else process.env.XDG_CACHE_HOME = before;
  rmSync(scratch, { recursive: true });
});

const entriesIn = (folder: string): string[] =>
  readdirSync(folder)
    .map((name) => join(folder, name))
    .flatMap((path) => (statSync(path).isDirectory() ? entriesIn(path) : [path]));

describe('what was proved before', () => {
  const scenario = scenarioById('warm-at-the-lights');
  const request = { seeds: 1, budgetSteps: null };
  const jobs = jobsOf(request, []);
  const results = firstResults({});
  let asked = 0;
  const runner: JobRunner = {
    run: async (_, job) => {
      asked++;
      return JSON.stringify(results[jobs.findIndex((one) => JSON.stringify(one) === JSON.stringify(job))]);
    },
    close: async () => {},
  };
  const proved = () =>
    proveScenario(scenario, request, { runner, cache: jobCache('a-prover'), onDone: () => {} });

  beforeEach(() => {
    process.env.XDG_CACHE_HOME = mkdtempSync(join(scratch, 'cache-'));
    asked = 0;
  });

  test('is taken from the cache, job by job, and is the same proof', async () => {
    const first = await proved();
    expect(asked).toBe(jobs.length);
    expect(await proved()).toEqual(first);
    expect(asked).toBe(jobs.length);
    expect(entriesIn(String(process.env.XDG_CACHE_HOME))).toHaveLength(jobs.length);
  });

  test('is reckoned again where an entry is cut short, changed or empty, and mended', async () => {
    const first = await proved();
    const [cut, changed, emptied] = entriesIn(String(process.env.XDG_CACHE_HOME));
    writeFileSync(cut, readFileSync(cut).subarray(0, 90));
    writeFileSync(changed, readFileSync(changed, 'utf8').replace(/\d(?=\D*$)/, '7 '));
    writeFileSync(emptied, '');
    expect(await proved()).toEqual(first);
    expect(asked).toBe(jobs.length + 3);
    expect(await proved()).toEqual(first);
    expect(asked).toBe(jobs.length + 3);
  });

  test('counts for nothing where nothing can be kept', async () => {
    const file = join(scratch, 'a-file');
    writeFileSync(file, '');
    process.env.XDG_CACHE_HOME = file;
    await proved();
    await proved();
    expect(asked).toBe(2 * jobs.length);
  });

  test('by other provers is forgotten in time', () => {
    const all = join(String(process.env.XDG_CACHE_HOME), 'portside', 'proofs');
    for (const name of ['one', 'two', 'three', 'four']) mkdirSync(join(all, name), { recursive: true });
    jobCache('five').put('key', 'body');
    expect(readdirSync(all)).toHaveLength(3);
    expect(jobCache('five').get('key')).toBe('body');
  });

  test('does not pile up: what an ended prover left halfway goes after an hour, the oldest when there are too many', () => {
    jobCache('one').put('key', 'body');
    const folder = join(String(process.env.XDG_CACHE_HOME), 'portside', 'proofs', 'one');
    const put = (name: string, ageSeconds: number): void => {
      writeFileSync(join(folder, name), '');
      const written = Date.now() / 1000 - ageSeconds;
      utimesSync(join(folder, name), written, written);
    };
    put('left.halfway', 7200);
    put('being.written', 10);
    for (let one = 0; one < 200; one++) put(`entry${one}`, 60 + one);
    const opened = (mostEntries: number) => jobCache('one', { mostEntries, staying: 150 });
    opened(201);
    expect(readdirSync(folder)).toHaveLength(202);
    expect(opened(200).get('key')).toBe('body');
    const names = readdirSync(folder);
    expect(names).toHaveLength(151);
    expect(names).toContain('being.written');
    expect(names).toContain('entry148');
    expect(names).not.toContain('entry149');
    expect(names).not.toContain('left.halfway');
  });
});

describe('prove as it is run', () => {
  /** A drill without a can, whose only rule nobody ever breaks: whoever does nothing passes. */
  const file = join(scratch, 'giveaway.yaml');
  const read = (path: string): string => readFileSync(join(projectFolder, path), 'utf8');
  const dropped = [...read('shared/rubrics/handingOver.yaml').matchAll(/- id: (\w+)/g)].map(([, id]) => id);
  const given: Readonly<Record<string, string>> = {
    bench: 'bench: { hoses: [charging], cans: [] }',
    rubric: `rubric:
  use: [handingOver]
  drop: [${dropped.join(', ')}]
  weights: { safety: 100, finding: 0, connecting: 0, charging: 0, diagnosis: 0 }
  add:
    - id: pitGas
      domain: safety
      points: 2
      severity: critical
      never: { event: ignited }
      quotes: { gas: pit.gasPpm, lost: vented.kg }
      references: [invented]
      tasks: [E2]`,
    plans: `plans:
  solution: [begin, finish]
  careless: [begin, finish]
  nothing: [begin, finish]`,
  };
  const parts = read('scenarios/drill-can-on-high.yaml').split(/\n(?=[a-z])/);
  const written = parts.map((part) => given[part.slice(0, part.indexOf(':'))] ?? part);
  writeFileSync(file, written.join('\n'));

  const portside = (...args: string[]) =>
    spawnSync(process.execPath, ['shared/build/portside.mjs', 'prove', ...args], {
      cwd: projectFolder,
      encoding: 'utf8',
      env: { ...process.env, XDG_CACHE_HOME: join(scratch, 'own') },
    });

  test('refuses planted luck, says where, and gives the same bytes with one thread, two, and out of the cache', () => {
    const one = portside(file, '--seeds', '1', '--threads', '1', '--no-cache', '--json');
    expect(one.stderr).not.toContain('Error');
    expect(one.status).toBe(1);
    const [proof] = JSON.parse(one.stdout).proofs;
    const luck = proof.findings.find(({ code }: { readonly code: string }) => code === 'PRV105');
    expect(luck).toMatchObject({ level: 'error', values: { player: 'nothing' } });
    expect(luck.at).toMatch(/giveaway\.yaml:\d+:\d+$/);
    const two = portside(file, '--seeds', '1', '--threads', '2', '--json');
    expect([two.status, two.stdout]).toEqual([1, one.stdout]);
    const page = join(scratch, 'page.html');
    const warm = portside(file, '--seeds', '1', '--threads', '1', '--page', page);
    expect(warm.status).toBe(1);
    expect(warm.stdout).toMatch(/^\S+giveaway\.yaml:\d+:\d+ PRV105 /);
    expect(readFileSync(page, 'utf8')).toContain('PRV105');
    const nowhere = portside(file, '--seeds', '1', '--threads', '1', '--page', scratch);
    expect([nowhere.status, nowhere.stdout]).toEqual([2, warm.stdout]);
  }, 600_000);
});

describe('what prove cannot be asked', () => {
  test.each([
    [[], 'FILE'],
    [['warm-at-the-lights', '--library'], '--library'],
    [['warm-at-the-lights', '--seeds', 'many'], 'whole number'],
    [['warm-at-the-lights', '--threads', '0'], 'whole number'],
    [['no-such-lesson'], 'no scenario'],
    [['lesson.txt'], 'ENOENT'],
    [['lessons/leaves'], 'ENOENT'],
  ])('%j', async (args, said) => {
    const { code, notes } = await callVerb([prove], ['prove', ...args]);
    expect([code, notes]).toEqual([2, expect.stringContaining(said)]);
  });

  test('a file that check finds errors in is not proved: they are told with their places', async () => {
    const { code, notes } = await callVerb([prove], ['prove', 'bad.yaml'], {
      'bad.yaml': 'schema: 1\ncolour: red\n',
    });
    expect(code).toBe(2);
    expect(notes).toMatch(/bad\.yaml:2:1 SCN\d+/);
  });
});
