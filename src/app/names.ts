/**
 * Names of ids for a reader: ports by their bore and what they stand on, hoses by what they are for, all else by the
 * groups of words. An id without a word is shown as it stands, so that nothing is hidden by a missing name.
 */
import { boreOf } from '../layout/bores';
import type { Layout } from '../layout/layout';
import { hoseName, portWords } from '../panels/portWords';
import type { Mode, SessionView } from '../session/corePort';
import { jointName } from '../twin/jointName';
import { neutralName } from '../twin/placeNames';
import { isWordId, say, word } from '../words/words';

const GROUPS = [
  'name.part',
  'name.line',
  'name.place',
  'name.zone',
  'name.side',
  'name.channel',
  'name.device',
  'name.way',
  'name.answer',
  'name.cause',
  'name.sure',
  'name.choice',
  'name.sheet',
] as const;
const HOSES = ['charging', 'gauge-low', 'gauge-high', 'utility'];

export function nameOf(id: string): string {
  const can = /^can-(\d+)$/.exec(id);
  if (can) return word('name.can', { number: can[1] });
  for (const group of GROUPS) {
    const wordId = `${group}.${id}`;
    if (isWordId(wordId)) return say({ id: wordId });
  }
  for (const wordId of [`faults.${id}.title`, `aims.${id.replace(/^rule\./, '')}`]) {
    if (isWordId(wordId)) return say({ id: wordId });
  }
  return jointName(id) ?? id;
}

/**
 * The same, where layout, mode and what has been traced say how ports, lines and parts of the loop may be told. Behind
 * the job everything has its name.
 */
export function sessionNames(
  layout: Layout,
  mode: Mode,
  view: () => Pick<SessionView, 'phase' | 'ports'> | null,
): (id: string) => string {
  const ended = (): boolean => view()?.phase === 'debrief';
  const traced = (id: string): boolean =>
    view()?.ports.find((port) => port.id === id)?.traced === true && mode !== 'assessed';
  return (id) => {
    const port = layout.ports.find((one) => one.id === id);
    if (port) {
      const known = mode === 'explore' || ended() || traced(id);
      const seen = view()?.ports.find((one) => one.id === id);
      return portWords(layout, port, known, nameOf, seen ? boreOf(seen.diameterM) : port.boreMm);
    }
    const neutral = mode === 'assessed' && !ended() ? neutralName(layout, id) : null;
    if (neutral !== null) return neutral;
    return HOSES.includes(id) ? hoseName(id) : nameOf(id);
  };
}
