/**
 * A log with something done otherwise: an action left out, given earlier or later, or given with another value. Actions
 * are numbered from 1 as they stand in the log. What was undone by going back is no longer there, so it cannot be edited.
 */
import type { Command } from '../../plant/commandSpecs';
import { argsOf, asCommand, type ShapeProblem, shapeProblem } from '../commandShape';
import type { LoggedCommand, SessionLog } from '../corePort';
import { isRewind, liveLog } from '../liveLog';

export type LogEdit =
  | { readonly kind: 'drop'; readonly number: number }
  | { readonly kind: 'move'; readonly number: number; readonly bySteps: number }
  | { readonly kind: 'set'; readonly number: number; readonly name: string; readonly value: string };

/** An action of the log that still holds, under its number there. */
export interface NumberedCommand extends LoggedCommand {
  readonly number: number;
}

/** An edit that cannot be made: no such action, or not a command any more. */
export class EditError extends RangeError {
  override readonly name = 'EditError';
  constructor(
    readonly number: number,
    readonly problem: ShapeProblem | null,
  ) {
    super(`no edit of action ${number}: ${problem?.reason ?? 'not in force'}`);
  }
}

export function numberedCommands({ commands }: Pick<SessionLog, 'commands'>): NumberedCommand[] {
  return liveLog(commands)
    .filter((entry) => !isRewind(entry))
    .map((entry) => ({
      ...entry,
      number: 1 + commands.findIndex(({ command }) => command === entry.command),
    }));
}

/** In the order they are given now; those of one step stay in the order they had. Throws `EditError`. */
export function editLog(entries: readonly NumberedCommand[], edits: readonly LogEdit[]): NumberedCommand[] {
  const edited = edits.reduce<readonly NumberedCommand[]>(withEdit, entries);
  return [...edited].sort((a, b) => a.step - b.step);
}

function withEdit(entries: readonly NumberedCommand[], edit: LogEdit): NumberedCommand[] {
  const { number } = edit;
  if (!entries.some((entry) => entry.number === number)) throw new EditError(number, null);
  if (edit.kind === 'drop') return entries.filter((entry) => entry.number !== number);
  return entries.map((entry) => {
    if (entry.number !== number) return entry;
    if (edit.kind === 'move') return { ...entry, step: Math.max(0, entry.step + edit.bySteps) };
    return { ...entry, command: commandWith(number, entry.command, edit.name, edit.value) };
  });
}

function commandWith(number: number, command: Command, name: string, value: string): Command {
  const spec = argsOf(command.do).find(([known]) => known === name)?.[1];
  const isNumber = spec?.kind === 'whole' && value.trim() !== '' && Number.isFinite(Number(value));
  const changed = { ...command, [name]: isNumber ? Number(value) : value };
  const problem = shapeProblem(changed);
  if (problem) throw new EditError(number, problem);
  return asCommand(changed);
}
