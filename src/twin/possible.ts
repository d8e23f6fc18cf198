/**
 * What can be done now: every command with what its arguments may be, and, where nothing of it is possible, why not. A
 * command counts as possible when the session would take it with at least one choice of ids.
 */
import {
  type ArgSpec,
  type Command,
  type CommandId,
  type CommandSpec,
  commandSpecs,
} from '../plant/commandSpecs';
import type { SessionCore } from '../session/corePort';

export interface PossibleArg {
  readonly name: string;
  readonly kind: ArgSpec['kind'];
  /** Ids and words it may be; empty for a number. */
  readonly options: readonly string[];
  readonly range?: {
    readonly min: number;
    readonly max: number;
    readonly step: number;
    readonly unit: string;
  };
}

export interface Possible {
  readonly do: CommandId;
  readonly group: CommandSpec['group'];
  readonly args: readonly PossibleArg[];
  /** Why nothing of it can be done now; null where something can. */
  readonly whyNot: { readonly reason: string; readonly params: Readonly<Record<string, string>> } | null;
}

/** Choices tried before a command is called impossible. */
const MOST_TRIED = 60;

export function possible(core: SessionCore): Possible[] {
  return (Object.keys(commandSpecs) as CommandId[]).map((id) => possibleCommand(core, id));
}

function possibleCommand(core: SessionCore, id: CommandId): Possible {
  const args = argsTaken(id, core.choices);
  return { do: id, group: commandSpecs[id].group, args, whyNot: whyNot(core, id, args) };
}

export type Choices = SessionCore['choices'];

/** Whatever an order takes, with what each argument may be now. */
export function argsTaken(id: CommandId, choices: Choices): PossibleArg[] {
  const { args }: CommandSpec = commandSpecs[id];
  return Object.entries(args).map(([name, spec]) => argOf(choices, name, spec));
}

/** Every order of which something can be named now. */
export function ordersTaken(choices: Choices): Pick<Possible, 'do' | 'args'>[] {
  return (Object.keys(commandSpecs) as CommandId[])
    .map((id) => ({ do: id, args: argsTaken(id, choices) }))
    .filter(({ args }) => !args.some(lacksChoice));
}

const lacksChoice = ({ kind, options }: PossibleArg): boolean => kind === 'id' && options.length === 0;

function argOf(choices: Choices, name: string, spec: ArgSpec): PossibleArg {
  if (spec.kind === 'whole') {
    const { min, max, step, unit } = spec;
    return { name, kind: spec.kind, options: [], range: { min, max, step, unit } };
  }
  return { name, kind: spec.kind, options: spec.kind === 'choice' ? spec.of : choices(spec.of) };
}

function whyNot(core: SessionCore, id: CommandId, args: readonly PossibleArg[]): Possible['whyNot'] {
  const missing = args.find(lacksChoice);
  if (missing) return { reason: 'twin.nothingToName', params: { name: missing.name } };
  let first: Possible['whyNot'] = null;
  for (const command of samples(id, args).slice(0, MOST_TRIED)) {
    const refusal = core.wouldRefuse(command);
    if (refusal === null) return null;
    first ??= refusal;
  }
  return first;
}

/** Every choice of ids, with the ends of each number's range and without any list. */
function samples(id: CommandId, args: readonly PossibleArg[]): Command[] {
  let commands: Command[] = [{ do: id }];
  for (const { name, kind, options, range } of args) {
    const values = range ? [range.max, range.min] : kind === 'ids' ? [''] : options;
    commands = commands.flatMap((command) => values.map((value): Command => ({ ...command, [name]: value })));
  }
  return commands;
}
