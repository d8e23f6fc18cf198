/** Under a hood that is shut no hand does anything in the bay. */
import { CASE_OPENINGS } from './caseOpenings';
import type { Command, CommandId, Outcome } from './commandSpecs';
import type { Desk } from './desk';
import { refuse } from './rig';

const IN_THE_BAY: ReadonlySet<CommandId> = new Set<CommandId>([
  ...([
    'look',
    'trace',
    'judge-port',
    'cap',
    'couple',
    'coupler',
    'uncouple',
    'route',
    'probe-line',
  ] as const),
  ...(['sniff', 'soap', 'lamp', 'inject-dye', 'identify'] as const),
  ...(['open-loop', 'close-loop', 'replace', 'clean'] as const),
]);

export function shutHood({ search }: Desk, command: Command): Outcome | null {
  if (search.hoodOpen || !IN_THE_BAY.has(command.do)) return null;
  return String(command.at) in CASE_OPENINGS ? null : refuse('hoodShut');
}
