/**
 * What was reckoned for a proof before, kept in the person's own cache folder: an entry for each part, by the prover's hash
 * and by what went in. An entry is its own sum and what came out; one that is cut short or changed counts as none. The
 * oldest go when there are too many, and what was written halfway by a prover that was ended. Where nothing can be written
 * nothing is kept, and nothing said.
 */
import { createHash, randomUUID } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';

export interface JobCache {
  get(key: string): string | null;
  put(key: string, body: string): void;
}

export const noCache: JobCache = { get: () => null, put: () => {} };

/** Folders of other provers that are kept, the latest used first. */
const KEPT = 2;

interface CacheLimits {
  /** Of a prover. */
  readonly mostEntries: number;
  /** So many stay where there were more, so that not every start looks for the oldest. */
  readonly staying: number;
}

/** The library with twenty bays of everything is some ten thousand, mostly under 4 kB each. */
const USUAL: CacheLimits = { mostEntries: 20_000, staying: 15_000 };
/** A file that is being written is renamed at once. */
const HALFWAY_MS = 3_600_000;

export function jobCache(proverHash: string, limits: CacheLimits = USUAL): JobCache {
  const all = join(cacheFolder(), 'portside', 'proofs');
  const folder = join(all, proverHash);
  quietly(() => mkdirSync(folder, { recursive: true }));
  quietly(() => forgetOthers(all, proverHash));
  quietly(() => tidy(folder, limits));
  const file = (key: string): string => join(folder, sum(key));
  return {
    get: (key) => quietly(() => bodyOf(readFileSync(file(key), 'utf8'))) ?? null,
    put: (key, body) =>
      void quietly(() => {
        const fresh = `${file(key)}.${randomUUID()}`;
        writeFileSync(fresh, `${sum(body)}\n${body}`);
        renameSync(fresh, file(key));
      }),
  };
}

function cacheFolder(): string {
  const { XDG_CACHE_HOME, LOCALAPPDATA } = process.env;
  if (XDG_CACHE_HOME) return XDG_CACHE_HOME;
  if (process.platform === 'win32' && LOCALAPPDATA) return LOCALAPPDATA;
  return join(homedir(), process.platform === 'darwin' ? 'Library/Caches' : '.cache');
}

function bodyOf(entry: string): string | null {
  const end = entry.indexOf('\n');
  const body = entry.slice(end + 1);
  return end > 0 && entry.slice(0, end) === sum(body) ? body : null;
}

const sum = (text: string): string => createHash('sha256').update(text).digest('hex');

function forgetOthers(all: string, proverHash: string): void {
  forgetOldest(
    all,
    readdirSync(all).filter((name) => name !== proverHash),
    KEPT,
  );
}

function tidy(folder: string, { mostEntries, staying }: CacheLimits): void {
  const names = readdirSync(folder);
  for (const name of names.filter((one) => one.includes('.'))) {
    const path = join(folder, name);
    if (Date.now() - statSync(path).mtimeMs > HALFWAY_MS) rmSync(path, { force: true });
  }
  const entries = names.filter((one) => !one.includes('.'));
  if (entries.length > mostEntries) forgetOldest(folder, entries, staying);
}

function forgetOldest(folder: string, names: readonly string[], staying: number): void {
  const dated = names.map((name) => ({
    path: join(folder, name),
    writtenMs: statSync(join(folder, name)).mtimeMs,
  }));
  dated.sort((a, b) => b.writtenMs - a.writtenMs);
  for (const { path } of dated.slice(staying)) rmSync(path, { recursive: true, force: true });
}

function quietly<Made>(act: () => Made): Made | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}
