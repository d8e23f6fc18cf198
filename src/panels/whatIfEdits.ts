/** Changes to the actions of a session, as one hand makes them: at most one leaving out, one moving, one value each. */
import type { Command } from '../plant/commandSpecs';
import { STEPS_PER_SECOND } from '../session/clock';
import type { LogEdit } from '../session/whatIf/editLog';

export interface ActionEdits {
  readonly isDropped: boolean;
  readonly movedSteps: number;
  /** By argument. */
  readonly values: Readonly<Record<string, string>>;
}

type Edits = readonly LogEdit[];

/** An action is moved by so much at a time. */
export const MOVE_STEPS = 10 * STEPS_PER_SECOND;

/** Without its beginning and its end there is no session. */
export const isFixed = (command: Command): boolean => command.do === 'begin' || command.do === 'finish';

export function editsOf(edits: Edits, number: number): ActionEdits {
  const own = edits.filter((edit) => edit.number === number);
  const moved = own.map((edit) => (edit.kind === 'move' ? edit.bySteps : 0));
  return {
    isDropped: own.some(({ kind }) => kind === 'drop'),
    movedSteps: moved.reduce((sum, steps) => sum + steps, 0),
    values: Object.fromEntries(own.flatMap((edit) => (edit.kind === 'set' ? [[edit.name, edit.value]] : []))),
  };
}

export const asItWas = (edits: Edits, number: number): Edits =>
  edits.filter((edit) => edit.number !== number);

export const leftOut = (edits: Edits, number: number): Edits => [
  ...asItWas(edits, number),
  { kind: 'drop', number },
];

/** To another time; what was left out comes back. */
export function movedBy(edits: Edits, number: number, bySteps: number): Edits {
  const sum = editsOf(edits, number).movedSteps + bySteps;
  const rest = edits.filter((edit) => edit.number !== number || edit.kind === 'set');
  return sum === 0 ? rest : [...rest, { kind: 'move', number, bySteps: sum }];
}

export function withValue(edits: Edits, number: number, name: string, value: string | null): Edits {
  const rest = edits.filter(
    (edit) => edit.number !== number || edit.kind === 'move' || (edit.kind === 'set' && edit.name !== name),
  );
  return value === null ? rest : [...rest, { kind: 'set', number, name, value }];
}
