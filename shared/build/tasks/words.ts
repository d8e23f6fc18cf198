/** `npm run words`: writes the typed word ids of src/words from shared/words/en; leaves alone what is right already. */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from '../folders.ts';
import { wordIdSources } from '../wordIds.ts';

export function run(): number {
  const sources = wordIdSources();
  const ids = join(projectFolder, 'src/words/ids');
  mkdirSync(ids, { recursive: true });
  for (const name of readdirSync(ids)) if (!sources.has(`src/words/ids/${name}`)) rmSync(join(ids, name));
  for (const [path, source] of sources) {
    const file = join(projectFolder, path);
    if (!existsSync(file) || readFileSync(file, 'utf8') !== source) writeFileSync(file, source);
  }
  return 0;
}
