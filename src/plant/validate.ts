/** A command against its spec: known, complete, every argument one that exists here and now, numbers in range and step. */
import {
  type ArgSpec,
  type Command,
  type CommandSpec,
  commandSpecs,
  type IdSet,
  type Outcome,
} from './commandSpecs';
import { refuse } from './rig';

type Choices = (set: IdSet) => readonly string[];

/** The refusal, or null where the command may go on to its handler. */
export function findFault(command: Command, choices: Choices): Outcome | null {
  if (!Object.hasOwn(commandSpecs, command.do)) return refuse('unknownCommand', { name: String(command.do) });
  const spec: CommandSpec = commandSpecs[command.do];
  for (const [name, arg] of Object.entries(spec.args)) {
    const fault = argumentFault(name, arg, command[name], choices);
    if (fault) return fault;
  }
  return null;
}

function argumentFault(
  name: string,
  spec: ArgSpec,
  value: string | number | undefined,
  choices: Choices,
): Outcome | null {
  if (value === undefined) return spec.kind === 'ids' ? null : refuse('missingArgument', { name });
  if (spec.kind === 'whole') return numberFault(name, spec, Number(value));
  const allowed = spec.kind === 'choice' ? spec.of : choices(spec.of);
  const given = spec.kind === 'ids' ? String(value).split(',').filter(Boolean) : [String(value)];
  const wrong = given.find((id) => !allowed.includes(id));
  return wrong === undefined
    ? null
    : refuse('unknownArgument', { value: wrong, allowed: allowed.join(', ') });
}

function numberFault(name: string, spec: ArgSpec & { kind: 'whole' }, value: number): Outcome | null {
  const { min, max, step } = spec;
  const fine = value >= min && value <= max && Number.isInteger((value - min) / step);
  if (fine) return null;
  return refuse('outOfRange', { name, minimum: String(min), maximum: String(max), step: String(step) });
}
