/** Builds the app into dist/app. */
import { join } from 'node:path';
import { build } from 'vite';
import { projectFolder } from './folders.ts';

export async function buildApp(): Promise<void> {
  await build({
    configFile: join(projectFolder, 'vite.config.ts'),
    mode: 'production',
    configLoader: 'runner',
    logLevel: 'warn',
  });
}
