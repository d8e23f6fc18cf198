/**
 * `npm run bench [-- NAME...] [-- --json]`: runs every function that tests/bench/*.bench.ts exports and prints what it
 * measured. A function returns figures by name, each name ending in its unit. Nothing here is a test.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { bundle, type ImportFile } from '../bundle.ts';
import { projectFolder } from '../folders.ts';

type Figures = Readonly<Record<string, number>>;
const FOLDER = 'tests/bench';
const SUFFIX = '.bench.ts';

export async function run(args: string[], importFile: ImportFile): Promise<number> {
  const wanted = args.filter((arg) => arg !== '--json');
  const known = readdirSync(join(projectFolder, FOLDER))
    .filter((name) => name.endsWith(SUFFIX))
    .sort();
  const names = known.map((name) => name.slice(0, -SUFFIX.length));
  const unknown = wanted.find((name) => !names.includes(name));
  if (unknown !== undefined) {
    console.error(`there is no bench "${unknown}"; there is ${names.join(', ')}`);
    return 2;
  }
  const all: Record<string, Figures> = {};
  for (const name of wanted.length > 0 ? wanted : names)
    all[name] = await measure(`${FOLDER}/${name}${SUFFIX}`, importFile);
  console.log(args.includes('--json') ? JSON.stringify(all, null, 2) : tableOf(all));
  return 0;
}

async function measure(file: string, importFile: ImportFile): Promise<Figures> {
  const figures: Record<string, number> = {};
  for (const value of Object.values(await importFile(await bundle(file)))) {
    if (typeof value === 'function') Object.assign(figures, await value());
  }
  return figures;
}

function tableOf(all: Readonly<Record<string, Figures>>): string {
  const rows = Object.entries(all).flatMap(([bench, figures]) =>
    Object.entries(figures).map(([name, value]) => [bench, name, figureText(value)] as const),
  );
  const width = (column: 0 | 1 | 2): number => Math.max(0, ...rows.map((row) => row[column].length));
  return rows
    .map(
      ([bench, name, value]) =>
        `${bench.padEnd(width(0))}  ${name.padEnd(width(1))}  ${value.padStart(width(2))}`,
    )
    .join('\n');
}

const figureText = (value: number): string =>
  value.toLocaleString(
    'en',
    value === 0 ? {} : { maximumSignificantDigits: Math.abs(value) >= 1000 ? 6 : 4 },
  );
