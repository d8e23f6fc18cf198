/** Under a hood that is shut no hand does anything in the bay; what sits in the cabin is reached from there. */
import { CASE_OPENINGS } from './caseOpenings';
import type { Command, CommandId, Outcome } from './commandSpecs';
import type { Desk } from './desk';
import { refuse } from './rig';

const IN_THE_BAY: ReadonlySet<CommandId> = new Set<CommandId>([
  ...([
    'look',
    'trace',
    'judge-port',
    'cover',
    'cap',
    'couple',
    'coupler',
    'uncouple',
    'route',
    'probe-line',
  ] as const),
  ...(['sniff', 'soap', 'lamp', 'inject-dye', 'identify', 'test-sealer'] as const),
  ...(['open-loop', 'close-loop', 'replace', 'clean', 'note-clutch'] as const),
  ...([
    'convert-port',
    'disable-port',
    'fill-oil',
    'renew-seals',
    'fit-cut-out',
    'label-conversion',
    'isolate',
    'bypass',
  ] as const),
]);

/** Parts got at from the seats. */
const IN_THE_CABIN: ReadonlySet<string> = new Set(['cabin-filter', 'blower', 'blend-door']);

export function shutHood({ search }: Desk, command: Command): Outcome | null {
  if (search.hoodOpen || !IN_THE_BAY.has(command.do)) return null;
  const place = String(command.at ?? command.part);
  return place in CASE_OPENINGS || IN_THE_CABIN.has(place) ? null : refuse('hoodShut');
}
