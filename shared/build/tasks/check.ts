/**
 * `npm run check`: types, lint and form, unused code, layers, licences of what ships, size, tests; all of them, and then
 * which failed. `-- --no-tests` leaves out the last.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { projectFolder } from '../folders.ts';

const node = process.execPath;
const tool = (name: string, ...args: string[]): string[] => [
  join(projectFolder, 'node_modules/.bin', name),
  ...args,
];
const chore = (name: string): string[] => [node, join(projectFolder, 'shared/build/run.mjs'), name];

const STEPS: readonly (readonly [name: string, command: readonly string[]])[] = [
  ['types', tool('tsc')],
  ['lint', tool('biome', 'ci', '--error-on-warnings')],
  ['unused code', tool('knip')],
  ['layers', tool('vitest', 'run', '--configLoader', 'runner', 'tests/architecture')],
  ['licences', chore('licences')],
  ['size', chore('size')],
  ['tests', tool('vitest', 'run', '--configLoader', 'runner')],
];

export function run(args: string[]): number {
  const steps = args.includes('--no-tests') ? STEPS.filter(([name]) => name !== 'tests') : STEPS;
  const results = steps.map(([name, [command = '', ...rest]]) => {
    console.log(`\n== ${name}`);
    const { status } = spawnSync(command, rest, { cwd: projectFolder, stdio: 'inherit' });
    return { name, passed: status === 0 };
  });
  console.log('');
  for (const { name, passed } of results) console.log(`${passed ? 'passed' : 'FAILED'}  ${name}`);
  return results.every(({ passed }) => passed) ? 0 : 1;
}
