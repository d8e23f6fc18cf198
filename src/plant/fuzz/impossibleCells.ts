/** Commands that are always refused in some states of the plant, by which rule: cells of the coverage that must stay empty. */
import type { CommandId } from '../commandSpecs';
import type { PlantState } from './plantStates';

export interface Impossible {
  readonly commands: readonly CommandId[];
  readonly states: readonly PlantState[];
  /** Word id of the refusal. */
  readonly because: string;
}

const TURNING = ['running', 'tripped', 'cycled-out', 'idling'] as const;

export const IMPOSSIBLE: readonly Impossible[] = [
  { commands: ['open-loop', 'replace', 'clean'], states: TURNING, because: 'refusal.engineRuns' },
  {
    commands: ['fill-oil', 'renew-seals', 'convert-port', 'disable-port', 'fit-cut-out', 'arrange'],
    states: TURNING,
    because: 'refusal.engineRuns',
  },
  // oil and seals go in where the loop stands open, level with the room
  {
    commands: ['fill-oil', 'renew-seals'],
    states: ['evacuated', 'standing'],
    because: 'refusal.loopNotOpen',
  },
  { commands: ['arrange'], states: ['open'], because: 'refusal.loopStandsOpen' },
  { commands: ['arrange'], states: ['evacuated'], because: 'refusal.nothingToTake' },
  { commands: ['soap'], states: TURNING, because: 'refusal.soapBlownOff' },
  // nothing is undone in any other state
  { commands: ['close-loop'], states: ['evacuated', 'standing', ...TURNING], because: 'refusal.already' },
];

/** The rule that empties a cell, or undefined. */
export function whyImpossible(command: CommandId, state: PlantState): string | undefined {
  return IMPOSSIBLE.find(({ commands, states }) => commands.includes(command) && states.includes(state))
    ?.because;
}
