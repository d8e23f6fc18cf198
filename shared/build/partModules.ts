/**
 * Vite plugin: `FILE.layout.yaml?parts` gives the drawings that a layout's parts wear, read from assets/parts/*.svg, and
 * `drill.yaml?parts` those that its list names. Each becomes a module of its own, so a page fetches what its car needs
 * and no more. The same plugin serves app, tests and chores; errors name file, line and column and stop the build.
 */
import { readFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import type { Plugin } from 'vite';
import type { PackedBundle } from '../../src/bay/drawing/parts/packed';
import type { PartFile } from '../../src/bay/drawing/parts/partFile';
import { readYaml } from '../schema/readYaml.ts';
import { projectFolder } from './folders.ts';
import { jsonModule } from './jsonModule.ts';
import { packParts } from './parts/packParts.ts';
import { drawingNameOf, drawingSizes, partDrawings, partFilePath } from './parts/partDrawings.ts';
import { validate } from './validate.ts';

const QUERY = '?parts';

interface Drawn {
  readonly parts: readonly { readonly kind: string; readonly drawing?: string }[];
}

export function partModules(): Plugin {
  /** File that an id stands for. */
  const sources = new Map<string, string>();
  return {
    name: 'portside:parts',
    enforce: 'pre',
    // under a name of its own, which the chunk then has: a car's layout is a chunk too
    resolveId: {
      filter: { id: /\.yaml\?parts$/ },
      async handler(id, importer) {
        const found = await this.resolve(id.slice(0, -QUERY.length), importer, { skipSelf: true });
        if (!found) return null;
        const named = join(dirname(found.id), `drawings-${basename(found.id).split('.')[0]}${QUERY}`);
        sources.set(named, found.id);
        return named;
      },
    },
    load: {
      filter: { id: /drawings-[a-z][a-z0-9-]*\?parts$/ },
      handler(id) {
        const path = sources.get(id);
        if (path === undefined) return null;
        const file = relative(projectFolder, path);
        const data = validate(file, readYaml(file, readFileSync(path, 'utf8')));
        const names = Array.isArray(data)
          ? (data as string[])
          : (data as Drawn).parts.map(({ kind, drawing }) => drawingNameOf(kind, drawing));
        this.addWatchFile(path);
        for (const name of names) this.addWatchFile(partFilePath(name));
        return jsonModule(bundleOf([...new Set(names.flatMap(withCompanions))].sort(), file));
      },
    },
  };
}

/** A drawing, and what is shown over it. */
const withCompanions = (name: string): string[] => [name, ...(partDrawings().get(name)?.meta.with ?? [])];

/** Throws for a name that is neither a file's nor drawn without one. */
function bundleOf(names: readonly string[], file: string): PackedBundle {
  const all = partDrawings();
  return packParts(
    names.flatMap((name): [string, PartFile][] => {
      const part = all.get(name);
      if (!part && !drawingSizes().has(name))
        throw new Error(`${file}: there is no assets/parts/${name}.svg`);
      return part ? [[name, part]] : [];
    }),
  );
}
