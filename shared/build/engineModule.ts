/**
 * Vite plugin: `import engineHash from 'virtual:engine-hash'` gives a hash of everything that decides how a log is played
 * and scored: the source below the screen, and the data of fluids, vehicles and rubrics. A session saved under another
 * hash can be shown but not played on. Words and comments count too: better one hash too many than a score that differs.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { projectFolder } from './folders.ts';

const ID = 'virtual:engine-hash';
const RESOLVED = `\0${ID}`;

const DECIDES = [
  ...['units', 'numerics', 'refrigerant', 'air', 'loop', 'layout', 'equipment', 'faults', 'plant', 'session'],
  ...['suspects', 'scoring'],
].map((folder) => `src/${folder}`);
const DATA = ['shared/refrigerants', 'shared/vehicles', 'shared/rubrics', 'shared/schema'];

export function engineModule(): Plugin {
  return {
    name: 'portside:engine',
    resolveId: { filter: { id: /^virtual:engine-hash$/ }, handler: () => RESOLVED },
    load: {
      filter: { id: /^\0virtual:engine-hash$/ },
      handler: () => ({ code: `export default '${engineHash()}';`, moduleType: 'js' }),
    },
  };
}

/** 16 hexadecimal digits. The same files give the same hash on every machine, whatever their line ends. */
export function engineHash(): string {
  const hash = createHash('sha256');
  for (const path of [...DECIDES, ...DATA].flatMap(filesUnder)) {
    const text = readFileSync(join(projectFolder, path), 'utf8').replaceAll('\r\n', '\n');
    hash.update(`${path}\0${text}\0`);
  }
  return hash.digest('hex').slice(0, 16);
}

function filesUnder(path: string): string[] {
  const stat = statSync(join(projectFolder, path), { throwIfNoEntry: false });
  if (!stat) return [];
  if (stat.isFile()) return [path];
  const names = readdirSync(join(projectFolder, path)).sort();
  return names.flatMap((name) => filesUnder(`${path}/${name}`));
}
