/**
 * Names of ids for a reader: the id is looked for among the groups of words, more particular ones first. A can is told by
 * its number. An id without a word is shown as it stands, so that nothing is hidden by a missing name.
 */
import { isWordId, say, word } from '../words/words';

const GROUPS = [
  'name.part',
  'name.line',
  'name.place',
  'name.zone',
  'name.channel',
  'name.answer',
  'name.cause',
  'name.sure',
  'name.side',
  'faults.title',
  'fault',
  'rules',
] as const;

export function nameOf(id: string): string {
  const can = /^can-(\d+)$/.exec(id);
  if (can) return word('name.can', { number: can[1] });
  for (const group of GROUPS) {
    const wordId = `${group}.${id}`;
    if (isWordId(wordId)) return say({ id: wordId });
  }
  return id;
}
