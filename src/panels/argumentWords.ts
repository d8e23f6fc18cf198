/** What is said of one argument of a command: an id by its name, a number as it stands. */
import type { Command } from '../plant/commandSpecs';
import { isWordId, say } from '../words/words';
import { valveStands } from './valveStands';

/** Arguments whose values are called otherwise than the same id elsewhere. */
const OWN_GROUPS = ['item', 'sum', 'to', 'from'];

export function argumentWords(
  command: Command,
  key: string,
  value: string | number,
  nameOf: (id: string) => string,
): string {
  if (key === 'turn') return valveStands(Number(value));
  const isItem = key === 'item' || (command.do === 'place' && key === 'at');
  const group = isItem ? 'item' : command.do === 'sum' && key === 'of' ? 'sum' : key;
  const wordId = `name.${group}.${value}`;
  if (OWN_GROUPS.includes(group) && isWordId(wordId)) return say({ id: wordId });
  return typeof value === 'number' ? String(value) : nameOf(value);
}
