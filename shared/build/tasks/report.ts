/**
 * `npm run report [-- SECTION...]`: computes the physics anew and writes one page with plots, each beside its source, to
 * dist/report/index.html; prints where it is.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { bundle, type ImportFile } from '../bundle.ts';
import { projectFolder } from '../folders.ts';

const ENTRY = 'tests/reference/physicsReport.ts';

export async function run(args: string[], importFile: ImportFile): Promise<number> {
  const { sections, physicsReport } = (await importFile(await bundle(ENTRY))) as {
    readonly sections: readonly string[];
    readonly physicsReport: (only: readonly string[] | undefined, onSection: (id: string) => void) => string;
  };
  const unknown = args.find((arg) => !sections.includes(arg));
  if (unknown !== undefined) {
    console.error(`there is no section "${unknown}"; there is ${sections.join(', ')}`);
    return 2;
  }
  const folder = join(projectFolder, 'dist/report');
  const file = join(folder, 'index.html');
  // an old page would look like this one
  rmSync(file, { force: true });
  mkdirSync(folder, { recursive: true });
  const page = physicsReport(args.length > 0 ? args : undefined, (id) => console.error(`computing ${id}`));
  writeFileSync(file, page);
  console.log(relative(process.cwd(), file));
  return 0;
}
