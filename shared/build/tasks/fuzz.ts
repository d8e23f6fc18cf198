/**
 * `npm run fuzz -- [--steps N] [--seed N] [--json]`: runs every function that tests/fuzz/*.fuzz.ts exports with
 * `(steps, seed)`. A function throws where it finds something, and returns figures. Exit code 1 is a finding.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { bundle, type ImportFile } from '../bundle.ts';
import { projectFolder } from '../folders.ts';

const FOLDER = 'tests/fuzz';
const STEPS = 1_000_000;

export async function run(args: string[], importFile: ImportFile): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      steps: { type: 'string', default: String(STEPS) },
      seed: { type: 'string', default: '1' },
      json: { type: 'boolean', default: false },
    },
  });
  const [steps, seed] = [Number(values.steps), Number(values.seed)];
  if (!Number.isInteger(steps) || steps < 1 || !Number.isInteger(seed)) {
    console.error('--steps and --seed need whole numbers');
    return 2;
  }
  const results: Record<string, unknown> = {};
  const files = readdirSync(join(projectFolder, FOLDER)).filter((name) => name.endsWith('.fuzz.ts'));
  for (const file of files.sort()) {
    for (const [name, value] of Object.entries(await importFile(await bundle(`${FOLDER}/${file}`)))) {
      if (typeof value === 'function') results[name] = await tryOut(() => value(steps, seed));
    }
  }
  const found = Object.values(results).some((result) => result instanceof Error);
  if (values.json)
    console.log(JSON.stringify(results, (_, value) => (value instanceof Error ? String(value) : value), 2));
  else for (const [name, result] of Object.entries(results)) console.log(name, result);
  return found ? 1 : 0;
}

async function tryOut(go: () => unknown): Promise<unknown> {
  try {
    return await go();
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error));
  }
}
