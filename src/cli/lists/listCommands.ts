/** Commands with their arguments, in the order they are typed. */
import { type CommandId, type CommandSpec, commandSpecs } from '../../plant/commandSpecs';

export const listCommands = () =>
  (Object.keys(commandSpecs) as CommandId[]).map((id) => {
    const { group, args }: CommandSpec = commandSpecs[id];
    return { id, group, args: Object.entries(args).map(([name, spec]) => ({ name, ...spec })) };
  });
