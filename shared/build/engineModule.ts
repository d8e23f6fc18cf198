/**
 * Vite plugin: `import engineHash from 'virtual:engine-hash'` gives a hash of everything that decides how a log is played
 * and scored: the source below the screen, and the data of fluids, vehicles, rubrics and places. A session saved under
 * another hash can be shown but not played on. Words and comments count too: better one hash too many than a score that
 * differs.
 *
 * `virtual:prover-hash` gives one over that and over what a proof hangs on besides: the text twin, the players, the words
 * they read. What was proved under another hash is proved again.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { projectFolder } from './folders.ts';

const DECIDES = [
  ...['units', 'numerics', 'refrigerant', 'air', 'loop', 'layout', 'equipment', 'faults', 'plant', 'session'],
  ...['suspects', 'scoring'],
].map((folder) => `src/${folder}`);
const DATA = ['refrigerants', 'vehicles', 'rubrics', 'jurisdictions', 'schema'].map(
  (folder) => `shared/${folder}`,
);
const PROVES = ['src/twin', 'src/prover', 'src/words/words.ts', 'src/words/sentence.ts', 'shared/words'];

export function engineModule(): Plugin {
  return {
    name: 'portside:engine',
    resolveId: { filter: { id: /^virtual:(engine|prover)-hash$/ }, handler: (id) => `\0${id}` },
    load: {
      filter: { id: /^\0virtual:(engine|prover)-hash$/ },
      handler(id) {
        const hash = id.includes('prover') ? proverHash() : engineHash();
        return { code: `export default '${hash}';`, moduleType: 'js' };
      },
    },
  };
}

/** 16 hexadecimal digits. The same files give the same hash on every machine, whatever their line ends. */
export const engineHash = (): string => hashOf([...DECIDES, ...DATA]);

export const proverHash = (): string => hashOf([...DECIDES, ...DATA, ...PROVES]);

function hashOf(paths: readonly string[]): string {
  const hash = createHash('sha256');
  for (const path of paths.flatMap(filesUnder)) {
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
