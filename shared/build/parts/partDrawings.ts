/** Every drawing there is, by name: the files of assets/parts, read anew only where one has changed. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { assetsFolder } from '../folders.ts';
import { type ReadPart, readPart } from './readPart.ts';

const folder = join(assetsFolder, 'parts');
const read = new Map<string, { readonly changedMs: number; readonly part: ReadPart }>();

/** Kinds that have no file: they follow the layout's numbers, or are drawn with the part they sit in. */
const DRAWN_OTHERWISE: readonly string[] = ['belt-front', 'belt-side', 'undrawn'];

/** A part wears the drawing of its kind, or a variant of it. */
export const drawingNameOf = (kind: string, drawing?: string): string =>
  drawing === undefined ? kind : `${kind}-${drawing}`;

export const partFilePath = (name: string): string => join(folder, `${name}.svg`);

export function partDrawings(): ReadonlyMap<string, ReadPart> {
  const names = readdirSync(folder)
    .filter((name) => name.endsWith('.svg'))
    .map((name) => name.slice(0, -'.svg'.length));
  return new Map(names.map((name) => [name, drawingOf(name)]));
}

/** Every drawing a part can wear, with the keys of the sizes it may be asked for in. */
export const drawingSizes = (): ReadonlyMap<string, readonly string[]> =>
  new Map([
    ...DRAWN_OTHERWISE.map((name): [string, string[]] => [name, []]),
    ...[...partDrawings()].map(([name, { meta }]): [string, string[]] => [
      name,
      Object.keys(meta.size ?? {}),
    ]),
  ]);

function drawingOf(name: string): ReadPart {
  const path = partFilePath(name);
  const changedMs = statSync(path).mtimeMs;
  const known = read.get(name);
  if (known?.changedMs === changedMs) return known.part;
  const part = readPart(`assets/parts/${name}.svg`, readFileSync(path, 'utf8'), name);
  read.set(name, { changedMs, part });
  return part;
}
