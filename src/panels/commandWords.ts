/** A command as a short sentence for the actions list, with every id by its name. */
import type { Command } from '../plant/commandSpecs';
import { isWordId, say } from '../words/words';
import { argumentWords } from './argumentWords';

export function commandWords(command: Command, nameOf: (id: string) => string): string {
  const id = `command.${command.do}`;
  if (!isWordId(id)) return command.do;
  const values: Record<string, string> = {};
  for (const [key, value] of Object.entries(command)) {
    if (key !== 'do' && key !== 'route') values[key] = argumentWords(command, key, value, nameOf);
  }
  return capital(say({ id, values: only(command, values) }));
}

/** A going back and a hint tell no number of their own. */
function only(command: Command, values: Record<string, string>): Record<string, string> {
  return command.do === 'rewind' ? {} : values;
}

const capital = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);
