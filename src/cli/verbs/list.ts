/** `list KIND`: ids with what they are, out of the registries: a table in words, or all of it as JSON. */
import { nearest } from '../../words/nearest';
import { word } from '../../words/words';
import { carTables } from '../lists/carTables';
import { fileTables } from '../lists/fileTables';
import type { Listed } from '../lists/listed';
import { recordTables } from '../lists/recordTables';
import { defineVerb, UsageError } from '../verb';

const LISTS: Readonly<Record<string, Listed>> = { ...carTables, ...fileTables, ...recordTables };

export default defineVerb({
  name: 'list',
  summary: 'verbs.list.summary',
  options: { json: { kind: 'flag', summary: 'verbs.list.json' } },
  operands: [{ name: 'KIND', required: true }],
  run({ options, operands: [kind] }, io) {
    if (!Object.hasOwn(LISTS, kind)) throw new UsageError(unknown(kind));
    if (options.json) io.json(LISTS[kind].entries());
    else io.text(LISTS[kind].table());
    return 0;
  },
});

function unknown(kind: string): string {
  const known = Object.keys(LISTS);
  const near = nearest(kind, known);
  return word('verbs.list.unknown', { kind, known: near === undefined ? known.join(', ') : near });
}
