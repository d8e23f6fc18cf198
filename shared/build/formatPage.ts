/** What the page for authors says of each key: the rows of its tables. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from './folders.ts';

export interface FormatPage {
  readonly text: string;
  /** Of the file's own keys by their path, `faults[].fault`; those with a star have to be there. */
  readonly keys: ReadonlyMap<
    string,
    { readonly holds: string; readonly example: string; readonly required: boolean }
  >;
  /** What each of them holds. */
  readonly says: ReadonlyMap<string, string>;
  /** Keys in a plan, a condition, a rule, by the table's heading. */
  readonly inner: ReadonlyMap<string, readonly string[]>;
}

const ROW = /^\| (.+?) \| (.+) \| (.+) \|$/;
const KEY = /`([^`]+)`(\*?)/g;

export function formatPage(): FormatPage {
  const text = readFileSync(join(projectFolder, 'scenarios/FORMAT.md'), 'utf8');
  const keys = new Map<string, { holds: string; example: string; required: boolean }>();
  const inner = new Map<string, string[]>();
  let heading = '';
  for (const line of text.split('\n')) {
    const [, first, holds, example] = ROW.exec(line) ?? [];
    if (first === undefined || first.startsWith('---')) continue;
    const named = [...first.matchAll(KEY)];
    if (named.length === 0) heading = first;
    else if (heading === 'key') keys.set(named[0][1], { holds, example, required: named[0][2] === '*' });
    else inner.set(heading, [...(inner.get(heading) ?? []), ...named.map(([, key]) => key)]);
  }
  const says = new Map([...keys].map(([key, { holds }]) => [key, holds.replaceAll('`', '')]));
  return { text, keys, says, inner };
}
