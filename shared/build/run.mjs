/**
 * Runs one of the project's own chores: `node shared/build/run.mjs NAME [arguments]`. A chore is
 * shared/build/tasks/NAME.ts with `run(args, importFile)`, which returns the exit code; vite's module runner loads the
 * TypeScript, and `importFile` is Node's own import, for what a chore has built.
 */
import { fileURLToPath, pathToFileURL } from 'node:url';
import { runnerImport } from 'vite';

const [name = '', ...args] = process.argv.slice(2);
const file = fileURLToPath(new URL(`./tasks/${name}.ts`, import.meta.url));
const { module } = await runnerImport(file, {
  root: fileURLToPath(new URL('../../', import.meta.url)),
  configFile: false,
  logLevel: 'error',
});
process.exitCode = await module.run(args, (file) => import(pathToFileURL(file).href));
