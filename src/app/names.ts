/**
 * Names of ids for a reader: ports by their bore and what they stand on, hoses by what they are for, all else by the
 * groups of words. An id without a word is shown as it stands, so that nothing is hidden by a missing name.
 */
import type { Layout } from '../layout/layout';
import { hoseName, portWords } from '../panels/portWords';
import type { Mode } from '../session/corePort';
import { isWordId, say, word } from '../words/words';

const GROUPS = [
  'name.part',
  'name.line',
  'name.place',
  'name.zone',
  'name.side',
  'name.channel',
  'name.answer',
  'name.cause',
  'name.sure',
] as const;
const HOSES = ['charging', 'gauge-low', 'gauge-high', 'utility'];

export function nameOf(id: string): string {
  const can = /^can-(\d+)$/.exec(id);
  if (can) return word('name.can', { number: can[1] });
  for (const group of GROUPS) {
    const wordId = `${group}.${id}`;
    if (isWordId(wordId)) return say({ id: wordId });
  }
  for (const wordId of [`faults.${id}.title`, `rules.${id.replace(/^rule\./, '')}.title`]) {
    if (isWordId(wordId)) return say({ id: wordId });
  }
  return id;
}

/** The same, where a layout and a mode say how ports may be told. */
export function sessionNames(layout: Layout, mode: Mode): (id: string) => string {
  return (id) => {
    const port = layout.ports.find((one) => one.id === id);
    if (port) return portWords(port, mode, nameOf);
    return HOSES.includes(id) ? hoseName(id) : nameOf(id);
  };
}
