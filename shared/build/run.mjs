/**
 * Runs one of the project's own chores: `node shared/build/run.mjs NAME [arguments]`. A chore is
 * shared/build/tasks/NAME.ts with `run(args)`, which returns the exit code; vite's module runner loads the TypeScript.
 */
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const [name = '', ...args] = process.argv.slice(2);
const file = fileURLToPath(new URL(`./tasks/${name}.ts`, import.meta.url));
const { module } = await runnerImport(file, {
  root: fileURLToPath(new URL('../../', import.meta.url)),
  configFile: false,
  logLevel: 'error',
});
process.exitCode = await module.run(args);
