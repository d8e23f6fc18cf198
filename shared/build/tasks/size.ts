/** `npm run size [-- --json]`: builds the app, prints what a browser fetches, and fails over budget. */
import { appFiles, type Part } from '../appSize.ts';
import { buildApp } from '../buildApp.ts';

const KIB = 1024;

/**
 * Gzipped. The shelf decides how soon a school computer on a slow line shows something. Of the bay, the property table of
 * one fluid takes 61 KiB, the drawing library 150 to 200, and the drawings of six cars some 120.
 */
const BUDGETS_KIB = { shelf: 70, bay: 700, everything: 1536 } as const;

export async function run(args: string[]): Promise<number> {
  await buildApp();
  const files = appFiles();
  const sum = (parts: readonly Part[]): number =>
    files.filter(({ part }) => parts.includes(part)).reduce((total, { gzipBytes }) => total + gzipBytes, 0);
  const totals = Object.entries({
    shelf: sum(['shelf']),
    bay: sum(['shelf', 'bay']),
    everything: sum(['shelf', 'bay', 'rest']),
  }).map(([name, gzipBytes]) => {
    const budgetBytes = BUDGETS_KIB[name as keyof typeof BUDGETS_KIB] * KIB;
    return { name, gzipBytes, budgetBytes, within: gzipBytes <= budgetBytes };
  });
  if (args.includes('--json')) console.log(JSON.stringify({ files, totals }, null, 2));
  else {
    for (const { file, part, gzipBytes } of files)
      console.log(`${part.padEnd(6)} ${kib(gzipBytes)}  ${file}`);
    for (const { name, gzipBytes, budgetBytes } of totals) {
      console.log(`${name}: ${kib(gzipBytes).trim()} of ${kib(budgetBytes).trim()} gzipped`);
    }
  }
  const over = totals.filter(({ within }) => !within);
  for (const { name } of over) console.error(`${name} is over its budget`);
  return over.length > 0 ? 1 : 0;
}

const kib = (bytes: number): string => `${(bytes / KIB).toFixed(1).padStart(8)} KiB`;
