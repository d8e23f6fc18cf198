/**
 * Is this a command at all? Checked against the command table before anybody acts on it, because commands also come from
 * files and from a keyboard line. What an id may be in this car is the plant's to say.
 */
import { type ArgSpec, type Command, type CommandId, commandSpecs } from '../plant/commandSpecs';
import { nearest } from '../words/nearest';

export interface ShapeProblem {
  readonly reason: string;
  readonly params: Readonly<Record<string, string>>;
}

export const argsOf = (id: CommandId): readonly (readonly [string, ArgSpec])[] =>
  Object.entries(commandSpecs[id].args) as [string, ArgSpec][];

export const isCommandId = (text: string): text is CommandId => Object.hasOwn(commandSpecs, text);

/** The first thing that is wrong with the shape of `command`, or null. */
export function shapeProblem(command: Readonly<Record<string, unknown>>): ShapeProblem | null {
  const id = String(command.do);
  if (!isCommandId(id))
    return near('session.refused.noSuchCommand', { command: id }, id, Object.keys(commandSpecs));
  const args = argsOf(id);
  for (const name of Object.keys(command)) {
    if (name !== 'do' && !args.some(([known]) => known === name)) {
      return near(
        'session.refused.noSuchArgument',
        { command: id, name },
        name,
        args.map(([known]) => known),
      );
    }
  }
  for (const [name, spec] of args) {
    const problem = argProblem(id, name, spec, command[name]);
    if (problem) return problem;
  }
  return null;
}

function argProblem(command: string, name: string, spec: ArgSpec, given: unknown): ShapeProblem | null {
  if (given === undefined) return { reason: 'session.refused.argumentMissing', params: { command, name } };
  if (spec.kind === 'whole') {
    const { min, max, step, unit } = spec;
    const fits = typeof given === 'number' && given >= min && given <= max && (given - min) % step === 0;
    if (fits) return null;
    const params = {
      name,
      given: String(given),
      min: String(min),
      max: String(max),
      step: String(step),
      unit,
    };
    return { reason: 'session.refused.notInRange', params };
  }
  if (typeof given !== 'string')
    return { reason: 'session.refused.notText', params: { name, given: String(given) } };
  if (spec.kind !== 'choice' || spec.of.includes(given)) return null;
  return { reason: 'session.refused.notAChoice', params: { name, given, known: spec.of.join(', ') } };
}

function near(reason: string, params: Record<string, string>, given: string, known: string[]): ShapeProblem {
  const found = nearest(given, known);
  return found === undefined
    ? { reason, params }
    : { reason: `${reason}Near`, params: { ...params, near: found } };
}

/** A command that passed `shapeProblem`. */
export const asCommand = (command: Readonly<Record<string, unknown>>): Command =>
  command as unknown as Command;
