/** `npm run schema`: writes shared/schema/scenario.schema.json, for editors; leaves it alone where it is right already. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundle, type ImportFile } from '../bundle.ts';
import { projectFolder } from '../folders.ts';
import { formatPage } from '../formatPage.ts';

const FILE = 'shared/schema/scenario.schema.json';

export async function run(_args: string[], importFile: ImportFile): Promise<number> {
  const { scenarioSchemaText } = (await importFile(await bundle('src/cli/schemaText.ts'))) as {
    readonly scenarioSchemaText: (says: ReadonlyMap<string, string>) => string;
  };
  const text = scenarioSchemaText(formatPage().says);
  const file = join(projectFolder, FILE);
  if (!existsSync(file) || readFileSync(file, 'utf8') !== text) writeFileSync(file, text);
  return 0;
}
