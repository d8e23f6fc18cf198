/** Bundles one TypeScript file for Node as the command line is bundled, and imports it: measured code is shipped code. */
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { projectFolder } from './folders.ts';
import { dataModules } from './plugins.ts';

/** `file` is relative to the project; gives the module's exports. */
export async function importBundled(file: string): Promise<Readonly<Record<string, unknown>>> {
  const outDir = join(projectFolder, 'dist/chores');
  const name = `${basename(file, '.ts')}.js`;
  await build({
    configFile: false,
    root: projectFolder,
    publicDir: false,
    logLevel: 'error',
    plugins: dataModules(),
    ssr: { noExternal: true },
    build: {
      ssr: join(projectFolder, file),
      outDir,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { codeSplitting: false, entryFileNames: name } },
    },
  });
  return import(pathToFileURL(join(outDir, name)).href);
}
