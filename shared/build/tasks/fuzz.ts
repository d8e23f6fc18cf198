/**
 * `npm run fuzz -- [--steps N] [--seed N] [--only INDEX] [--json]`: runs every function that tests/fuzz/*.fuzz.ts
 * exports with `(steps, seed, only)`. It returns figures, with what it found in `findings`, or throws. `--only` is one case
 * of the many alone, told at length. Exit code 1 is a finding.
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
      only: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  });
  const [steps, seed] = [Number(values.steps), Number(values.seed)];
  const only = values.only === undefined ? undefined : Number(values.only);
  if (!Number.isInteger(steps) || steps < 1 || !Number.isInteger(seed) || !Number.isInteger(only ?? 0)) {
    console.error('--steps, --seed and --only need whole numbers');
    return 2;
  }
  const results: Record<string, unknown> = {};
  const files = readdirSync(join(projectFolder, FOLDER)).filter((name) => name.endsWith('.fuzz.ts'));
  for (const file of files.sort()) {
    for (const [name, value] of Object.entries(await importFile(await bundle(`${FOLDER}/${file}`)))) {
      if (typeof value === 'function') results[name] = await tryOut(() => value(steps, seed, only));
    }
  }
  const found = Object.values(results).some((result) => result instanceof Error || hasFindings(result));
  if (values.json)
    console.log(JSON.stringify(results, (_, value) => (value instanceof Error ? String(value) : value), 2));
  else for (const [name, result] of Object.entries(results)) tell(name, result);
  return found ? 1 : 0;
}

function hasFindings(result: unknown): boolean {
  return (
    typeof result === 'object' && result !== null && 'findings' in result && String(result.findings) !== ''
  );
}

/** A table where there is one: rows of figures by name. */
function tell(name: string, result: unknown): void {
  if (typeof result !== 'object' || result === null || result instanceof Error) {
    console.log(name, result);
    return;
  }
  const { coverage, lines, ...rest } = result as { coverage?: object; lines?: readonly string[] };
  for (const line of lines ?? []) console.log(line);
  if (coverage) console.table(coverage);
  console.dir({ [name]: rest }, { depth: 4, maxArrayLength: null });
}

async function tryOut(go: () => unknown): Promise<unknown> {
  try {
    return await go();
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error));
  }
}
