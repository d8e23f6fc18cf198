import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { defineConfig } from 'vite';
import solid from 'vite-plugin-solid';
import { appFolder, assetsFolder, cliFolder, sourceFolder } from './shared/build/folders.ts';
import { leanMatter } from './shared/build/leanMatter.ts';
import { leanPixi } from './shared/build/leanPixi.ts';
import { notServed } from './shared/build/notServed.ts';
import { dataModules } from './shared/build/plugins.ts';
import { policyTag } from './shared/build/policyTag.ts';

/** Every page of the app: the html files that stand directly in src/. */
const pages = (): string[] =>
  readdirSync(sourceFolder)
    .filter((name) => name.endsWith('.html'))
    .map((name) => join(sourceFolder, name));

/** How long a plugin took is nothing that whoever starts the app wants to read. */
const QUIET = { pluginTimings: false };

/** `vite build` makes the app; `vite build --mode cli` makes the command line, one file. */
export default defineConfig(({ mode }) => ({
  root: sourceFolder,
  publicDir: mode === 'cli' ? false : assetsFolder,
  base: './',
  plugins: [
    ...dataModules(),
    ...(mode === 'cli' ? [] : [solid(), leanMatter(), leanPixi(), policyTag(), notServed()]),
  ],
  worker: { format: 'es' as const, plugins: dataModules, rolldownOptions: { checks: QUIET } },
  ssr: { noExternal: true },
  build:
    mode === 'cli'
      ? {
          ssr: join(sourceFolder, 'cli/main.ts'),
          outDir: cliFolder,
          emptyOutDir: false,
          target: 'node20',
          minify: false,
          rolldownOptions: { output: { codeSplitting: false, entryFileNames: 'main.js' } },
        }
      : {
          outDir: appFolder,
          emptyOutDir: true,
          target: 'es2022',
          modulePreload: { polyfill: false },
          rolldownOptions: { input: pages(), checks: QUIET },
        },
}));
