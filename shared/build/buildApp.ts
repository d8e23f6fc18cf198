/** Builds the app, into dist/app unless another folder is given. */
import { join } from 'node:path';
import { build } from 'vite';
import { appFolder, projectFolder } from './folders.ts';

export async function buildApp(outDir: string = appFolder): Promise<void> {
  await build({
    configFile: join(projectFolder, 'vite.config.ts'),
    mode: 'production',
    configLoader: 'runner',
    logLevel: 'warn',
    build: { outDir },
  });
}
