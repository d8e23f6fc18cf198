/** An action of a finished session as a short sentence. Who begins a second time carries on after a stop. */
import { word } from '../words/words';
import { commandWords } from './commandWords';
import type { DebriefAction } from './debriefModel';

export const actionWords = (
  { number, command }: Pick<DebriefAction, 'number' | 'command'>,
  nameOf: (id: string) => string,
): string =>
  command.do === 'begin' && number > 1 ? word('debrief.carriedOn') : commandWords(command, nameOf);
