/**
 * What a browser has to fetch, gzipped, in three parts: the shelf (the page, and all it imports before it can show
 * anything), the bay (all that playing can load besides, workers included) and the rest (other pages, drawings, icons).
 * A session fetches the property table of one fluid, one scenario and the drawings of one car, so of each the largest
 * counts for the bay and the others for the rest.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'vite';
import { appFolder, projectFolder } from './folders.ts';

/** Chunk of a fluid's property table. */
const TABLE = /^r\d+[a-z]*-[\w-]+\.js$/;

/** Chunk of a car's drawings. */
const DRAWINGS = /^drawings-/;

/** Chunks of pages that are no part of a session. */
const OTHER_PAGE = /^(CardPage|card\.worker|DrillPage|drill\.worker|drawings-drill_parts)-/;

const scenarioIds = readdirSync(join(projectFolder, 'scenarios'))
  .filter((file) => file.endsWith('.yaml'))
  .map((file) => basename(file, '.yaml'));
/** Chunk of a scenario: its id and a hash of eight. */
const isScenario = (name: string): boolean =>
  scenarioIds.some((id) => name.startsWith(`${id}-`) && name.length === id.length + '-12345678.js'.length);

export type Part = 'shelf' | 'bay' | 'rest';

export interface SizedFile {
  readonly file: string;
  readonly part: Part;
  readonly bytes: number;
  readonly gzipBytes: number;
}

export function appFiles(): SizedFile[] {
  const files = readdirSync(appFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const page = join(appFolder, 'index.html');
  const shelf = closureOf(page, files, staticImports);
  const bay = closureOf(page, files, (file) =>
    namesIn(file, files).filter((name) => !OTHER_PAGE.test(basename(name))),
  );
  const isTable = (name: string): boolean => TABLE.test(name);
  const isDrawings = (name: string): boolean => DRAWINGS.test(name) && !OTHER_PAGE.test(name);
  for (const isOne of [isTable, isScenario, isDrawings]) {
    const [, ...others] = files.filter((file) => isOne(basename(file))).sort(byGzip);
    for (const other of others) bay.delete(other);
  }
  return files
    .map((file): SizedFile => {
      const content = readFileSync(file);
      const part = shelf.has(file) ? 'shelf' : bay.has(file) ? 'bay' : 'rest';
      const name = file.slice(appFolder.length + 1);
      return { file: name, part, bytes: content.length, gzipBytes: gzipSync(content, { level: 9 }).length };
    })
    .sort((a, b) => (a.part === b.part ? b.gzipBytes - a.gzipBytes : a.part < b.part ? 1 : -1));
}

/** Largest first. */
const byGzip = (a: string, b: string): number =>
  gzipSync(readFileSync(b)).length - gzipSync(readFileSync(a)).length;

/** The page, what it links, and what those scripts reach, by `reach`. */
function closureOf(page: string, files: readonly string[], reach: (file: string) => string[]): Set<string> {
  const byName = new Map(files.map((file) => [basename(file), file]));
  const closure = new Set([page]);
  const html = readFileSync(page, 'utf8');
  const open = [...html.matchAll(/(?:src|href)="([^"]+\.(?:js|css))"/g)].map((match) =>
    basename(match[1] as string),
  );
  for (let name = open.pop(); name !== undefined; name = open.pop()) {
    const file = byName.get(name);
    if (!file || closure.has(file)) continue;
    closure.add(file);
    if (file.endsWith('.js')) open.push(...reach(file).map((name) => basename(name)));
  }
  return closure;
}

function staticImports(file: string): string[] {
  const { module } = parseSync(file, readFileSync(file, 'utf8'));
  const reexports = module.staticExports.flatMap(({ entries }) =>
    entries.map((entry) => entry.moduleRequest?.value),
  );
  const imports = module.staticImports.map(({ moduleRequest }) => moduleRequest.value);
  return [...imports, ...reexports].filter((specifier) => specifier !== undefined);
}

/** Every script and style sheet that a script names: imports of both kinds, workers, preloads. */
function namesIn(file: string, files: readonly string[]): string[] {
  const text = readFileSync(file, 'utf8');
  return files.filter((other) => /\.(js|css)$/.test(other) && text.includes(basename(other)));
}
