/** Under a cover no hand gets at a port: not at its cap, nor at its core, nor does an eye follow its line. */
import type { Command, CommandId, Outcome } from './commandSpecs';
import type { Desk } from './desk';
import { refuse } from './rig';

const AT_THE_PORT: ReadonlySet<CommandId> = new Set<CommandId>([
  ...(['trace', 'cap', 'couple', 'identify', 'test-sealer'] as const),
  ...(['soap', 'lamp', 'convert-port', 'disable-port'] as const),
]);

export function underCover({ covers }: Desk, command: Command): Outcome | null {
  if (!AT_THE_PORT.has(command.do)) return null;
  return covers[String(command.port ?? command.at)] === true ? refuse('underCover') : null;
}
