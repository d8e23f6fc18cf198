/**
 * The command line: `npm run -s portside -- VERB`. Builds src/cli into dist/cli/main.js when anything it is made from
 * has changed (path, size or time of a file), says so on the error stream only, then runs it in this process.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const project = fileURLToPath(new URL('../../', import.meta.url));
const target = join(project, 'dist/cli');
const MADE_FROM = ['src', 'shared', 'scenarios', 'vite.config.ts', 'package-lock.json'];
const NOT_MADE_FROM = new Set(['app', 'bay', 'panels', 'tasks']);

function fingerprint() {
  const hash = createHash('sha256');
  const visit = (path) => {
    const stat = statSync(path, { throwIfNoEntry: false });
    if (!stat) return;
    if (!stat.isDirectory()) {
      hash.update(`${path}\0${stat.size}\0${stat.mtimeMs}\n`);
      return;
    }
    for (const name of readdirSync(path).sort()) if (!NOT_MADE_FROM.has(name)) visit(join(path, name));
  };
  for (const name of MADE_FROM) visit(join(project, name));
  return hash.digest('hex');
}

/** One file named for what it was made from, so that two builds at once do not meet; older ones go, but the last two. */
async function build(file) {
  process.stderr.write('portside: building the command line\n');
  const { build: viteBuild } = await import('vite');
  const fresh = join(project, `dist/cli-${process.pid}`);
  await viteBuild({
    configFile: join(project, 'vite.config.ts'),
    configLoader: 'runner',
    mode: 'cli',
    logLevel: 'error',
    build: { outDir: fresh },
  });
  mkdirSync(target, { recursive: true });
  renameSync(join(fresh, 'main.js'), file);
  rmSync(fresh, { recursive: true });
  const builds = readdirSync(target)
    .filter((name) => /^main-.*\.js$/.test(name))
    .map((name) => join(target, name));
  const age = new Map(builds.map((path) => [path, statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0]));
  builds.sort((a, b) => age.get(b) - age.get(a));
  for (const path of builds.slice(3)) rmSync(path, { force: true });
}

const file = join(target, `main-${fingerprint().slice(0, 12)}.js`);
if (!existsSync(file)) await build(file);
await import(pathToFileURL(file).href);
