/** `npm run size [-- --json]`: builds the app, prints what a browser fetches, and fails over budget. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { appFiles, PARTS, type Part } from '../appSize.ts';
import { buildApp } from '../buildApp.ts';
import { projectFolder } from '../folders.ts';

const KB = 1000;

/**
 * Gzipped kB of 1000 bytes. The shelf decides how soon a school computer on a slow line shows something, the bay how soon
 * a job can begin, the workshop how soon a text is read and its car runs. Later grows with what there is to choose from: so
 * much for pages, screens and the prover, and so much for each scenario, as data, as text, and told in each language.
 */
const BUDGETS_KB = {
  shelf: 60,
  bay: 330,
  workshop: 620,
  laterPages: 640,
  laterPerScenario: 9,
  laterPerTelling: 2,
} as const;

export async function run(args: string[]): Promise<number> {
  await buildApp();
  const files = appFiles();
  const sum = (part: Part): number =>
    files.filter((file) => file.part === part).reduce((total, { gzipBytes }) => total + gzipBytes, 0);
  const budgets = { ...BUDGETS_KB, later: laterKb() };
  const totals = PARTS.map((name) => {
    const [gzipBytes, budgetBytes] = [sum(name), budgets[name] * KB];
    return { name, gzipBytes, budgetBytes, within: gzipBytes <= budgetBytes };
  });
  if (args.includes('--json')) console.log(JSON.stringify({ files, totals }, null, 2));
  else {
    for (const { file, part, gzipBytes } of files) console.log(`${part.padEnd(6)} ${kb(gzipBytes)}  ${file}`);
    for (const { name, gzipBytes, budgetBytes } of totals)
      console.log(`${name}: ${kb(gzipBytes).trim()} of ${kb(budgetBytes).trim()} gzipped`);
  }
  const over = totals.filter(({ within }) => !within);
  for (const { name } of over) console.error(`${name} is over its budget`);
  return over.length > 0 ? 1 : 0;
}

function laterKb(): number {
  const filesIn = (folder: string): number =>
    readdirSync(join(projectFolder, folder)).filter((name) => name.endsWith('.yaml')).length;
  const scenarios = filesIn('scenarios');
  const languages = readdirSync(join(projectFolder, 'shared/words')).length;
  return (
    BUDGETS_KB.laterPages + scenarios * (BUDGETS_KB.laterPerScenario + languages * BUDGETS_KB.laterPerTelling)
  );
}

const kb = (bytes: number): string => `${(bytes / KB).toFixed(1).padStart(8)} kB`;
