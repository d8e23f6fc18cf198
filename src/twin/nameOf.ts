/** Name of an id for a reader, from the words; an id without one is said as it stands, so that nothing is hidden. */
import { isWordId, say, word } from '../words/words';
import { jointName } from './jointName';

const GROUPS = [
  'part',
  'line',
  'place',
  'zone',
  'channel',
  'device',
  'way',
  'answer',
  'cause',
  'sure',
  'side',
  'bridge',
  'choice',
] as const;

export function nameOf(id: string): string {
  const can = /^can-(\d+)$/.exec(id);
  if (can) return word('name.can', { number: can[1] });
  const found = [...GROUPS.map((group) => `name.${group}.${id}`), `faults.${id}.title`].find(isWordId);
  return found === undefined ? (jointName(id) ?? id) : say({ id: found as never });
}
