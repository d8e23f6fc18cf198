/**
 * What a browser has to fetch, gzipped, in four parts: the shelf (the page, and all it fetches before it can show
 * anything), the bay (all that a session fetches besides until hands can work in it, its worker included), the workshop
 * (what it and the workers it starts with fetch besides, every car and table included) and later (what is fetched on demand: forms,
 * see-inside, the bay in words, debrief and what-if, other pages). Of what comes in many kinds a session fetches one (a
 * fluid's table, a scenario, a car, a language's words): the largest counts for the bay, the others for later. A browser
 * test holds this against what a session really fetches.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'vite';
import { appFolder, projectFolder } from './folders.ts';

export type Part = 'shelf' | 'bay' | 'workshop' | 'later';

export const PARTS: readonly Part[] = ['shelf', 'bay', 'workshop', 'later'];

export interface SizedFile {
  readonly file: string;
  readonly part: Part;
  readonly bytes: number;
  readonly gzipBytes: number;
}

const namesUnder = (folder: string): string =>
  readdirSync(join(projectFolder, folder))
    .filter((name) => /^[\w-]+\.yaml$/.test(name))
    .map((name) => basename(name, '.yaml'))
    .join('|');

/** Chunks that the page fetches by itself when a session is opened, and what a worker starts from. */
const SESSION = /^(SessionPage|bayView)-/;
const WORKER = /^core\.worker-/;
const WORKSHOP = /^WorkshopPage-/;
const WORKSHOP_WORKERS = /^(workshop|car)\.worker-/;
const hashed = (stem: string): RegExp => new RegExp(`^(?:${stem})-[\\w-]{8}\\.js$`);
const CAR = [hashed(namesUnder('shared/vehicles')), hashed('[\\w-]+\\.layout')];
/** Of each of these one is fetched. */
const SHELF_KINDS = [hashed('words-\\w+-page'), hashed('told-\\w+-shelf')];
const PAGE_KINDS = [
  ...CAR,
  hashed('words-\\w+-job'),
  hashed(`told-\\w+-(?:${namesUnder('scenarios')})`),
  hashed('drawings-[\\w-]+'),
];
const WORKSHOP_KINDS = [hashed('words-\\w+-job'), hashed('words-\\w+-workshop')];
const WORDS_OF_CHECK = ['page', 'job', 'findings', 'workshop'].map((lot) => hashed(`words-\\w+-${lot}`));
const TABLE = hashed('r\\d+[a-z]*');
const WORKER_KINDS = [...CAR, hashed(namesUnder('scenarios')), TABLE];

export function appFiles(folder: string = appFolder): SizedFile[] {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const parts = partsOf(files, join(folder, 'index.html'));
  return files
    .map((file): SizedFile => {
      const content = readFileSync(file);
      const part = PARTS.find((one) => one !== 'later' && parts[one].has(file)) ?? 'later';
      const name = file.slice(folder.length + 1);
      return { file: name, part, bytes: content.length, gzipBytes: gzipped(file) };
    })
    .sort((a, b) => (a.part === b.part ? b.gzipBytes - a.gzipBytes : rank(a.part) - rank(b.part)));
}

const rank = (part: Part): number => PARTS.indexOf(part);
const gzipped = (file: string): number => gzipSync(readFileSync(file), { level: 9 }).length;

function partsOf(files: readonly string[], html: string): Record<Exclude<Part, 'later'>, Set<string>> {
  const byName = new Map(files.map((file) => [basename(file), file]));
  const close = (from: readonly string[]): Set<string> => closureOf(from, byName);
  const linked = [...readFileSync(html, 'utf8').matchAll(/(?:src|href)="[^"]*?([^"/]+\.(?:js|css|svg))"/g)];
  const first = close([
    html,
    ...found(
      linked.map((match) => match[1] as string),
      byName,
    ),
  ]);
  const shelf = close([...first, ...oneOfEach(first, SHELF_KINDS, files)]);
  const session = close([...shelf, ...files.filter((file) => SESSION.test(basename(file)))]);
  const worker = close(files.filter((file) => WORKER.test(basename(file))));
  const page = close([...session, ...oneOfEach(session, PAGE_KINDS, files)]);
  const bay = new Set([...page, ...close([...worker, ...oneOfEach(worker, WORKER_KINDS, files)])]);
  return { shelf, bay, workshop: workshopOf(files, close) };
}

/** Its workers hold every car and table, for a text may name any; of words they fetch one language. */
function workshopOf(files: readonly string[], close: (from: readonly string[]) => Set<string>): Set<string> {
  const named = (pattern: RegExp): string[] => files.filter((file) => pattern.test(basename(file)));
  const page = close(named(WORKSHOP));
  const workers = close(named(WORKSHOP_WORKERS));
  const cars = namedBy(workers, [...CAR, TABLE], files);
  const words = oneOfEach(workers, WORDS_OF_CHECK, files);
  return new Set([
    ...page,
    ...oneOfEach(page, WORKSHOP_KINDS, files),
    ...close([...workers, ...cars, ...words]),
  ]);
}

const found = (names: readonly string[], byName: ReadonlyMap<string, string>): string[] =>
  names.flatMap((name) => byName.get(name) ?? []);

/** Files and all that they import statically, style sheets of the chunks' own names included. */
function closureOf(from: readonly string[], byName: ReadonlyMap<string, string>): Set<string> {
  const closure = new Set<string>();
  const open = [...from];
  for (let file = open.pop(); file !== undefined; file = open.pop()) {
    if (closure.has(file)) continue;
    closure.add(file);
    if (file.endsWith('.js'))
      open.push(
        ...found(
          staticImports(file).map((path) => basename(path)),
          byName,
        ),
      );
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

/** Of every kind the largest of those that these chunks name. */
function oneOfEach(
  chunks: ReadonlySet<string>,
  kinds: readonly RegExp[],
  files: readonly string[],
): string[] {
  return kinds.flatMap((kind) =>
    namedBy(chunks, [kind], files)
      .sort((a, b) => gzipped(b) - gzipped(a))
      .slice(0, 1),
  );
}

/** Files of these kinds that these chunks name. */
function namedBy(chunks: ReadonlySet<string>, kinds: readonly RegExp[], files: readonly string[]): string[] {
  const texts = [...chunks].filter((file) => file.endsWith('.js')).map((file) => readFileSync(file, 'utf8'));
  return files.filter((file) => {
    const name = basename(file);
    return kinds.some((kind) => kind.test(name)) && texts.some((text) => text.includes(name));
  });
}
