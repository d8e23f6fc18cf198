/** Bundles one TypeScript file for Node as the command line is bundled: measured code is shipped code. */
import { basename, join } from 'node:path';
import { build } from 'vite';
import { projectFolder } from './folders.ts';
import { dataModules } from './plugins.ts';

export type ImportFile = (file: string) => Promise<Readonly<Record<string, unknown>>>;

/** `file` is relative to the project; gives the path of the bundle. */
export async function bundle(file: string): Promise<string> {
  const outDir = join(projectFolder, 'dist/chores');
  const name = `${basename(file, '.ts')}.js`;
  await build({
    configFile: false,
    root: projectFolder,
    publicDir: false,
    logLevel: 'error',
    plugins: dataModules(),
    // A browser's driver is no code of ours, and finds files beside itself.
    ssr: { noExternal: true, external: ['playwright-core', 'vite'] },
    build: {
      ssr: join(projectFolder, file),
      outDir,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { codeSplitting: false, entryFileNames: name } },
    },
  });
  return join(outDir, name);
}
