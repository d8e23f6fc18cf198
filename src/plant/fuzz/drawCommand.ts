/** Commands with arguments drawn from what the plant offers, mostly such as the command can act on now. */
import type { PlantParts } from '../assemblePlant';
import { type ArgSpec, type Command, type CommandId, type CommandSpec, commandSpecs } from '../commandSpecs';
import type { Plant } from '../plantPort';
import { replaceable } from '../replaceable';
import { type Draw, pick } from './fuzzCase';

export const COMMAND_IDS = Object.keys(commandSpecs) as readonly CommandId[];
/** Under a hood that is shut hardly anything can be done. */
const HOOD_MOSTLY_OPEN = 0.6;
const MOSTLY = 0.7;

export function drawCommand(plant: Plant, parts: PlantParts, id: CommandId, next: Draw): Command {
  if (id === 'hood' && next() < HOOD_MOSTLY_OPEN) return { do: id, to: 'open' };
  const spec: CommandSpec = commandSpecs[id];
  const args = Object.entries(spec.args).map(([name, arg]) => [
    name,
    drawArgument(plant, parts, name, arg, next),
  ]);
  return { do: id, ...Object.fromEntries(args), ...(next() < MOSTLY ? likely(parts, id, next) : {}) };
}

function drawArgument(
  plant: Plant,
  parts: PlantParts,
  name: string,
  arg: ArgSpec,
  next: Draw,
): string | number {
  if (arg.kind === 'whole') {
    const count = Math.floor((arg.max - arg.min) / arg.step) + 1;
    // an engine that stands and a valve that is shut more often than chance has it
    const share = next() < 0.3 && (name === 'rpm' || name === 'turn') ? 0 : next();
    return arg.min + arg.step * Math.floor(share * count);
  }
  if (arg.kind === 'choice') return pick(arg.of, next);
  if (arg.kind === 'id') return pick(plant.choices(arg.of), next) ?? '';
  // a way that some port has: through the fan or over the belt as often as over the fender
  return pick(parts.layout.routes, next).through.join(',');
}

/** What the command can act on as things stand, if there is any. */
function likely(parts: PlantParts, id: CommandId, next: Draw): Record<string, string> {
  const { desk } = parts;
  const { opened } = desk.search;
  const one = (name: string, of: readonly string[]): Record<string, string> =>
    of.length > 0 ? { [name]: pick(of, next) } : {};
  switch (id) {
    case 'can-valve':
    case 'untap':
      return one(
        'can',
        idsOf(desk.cans, ({ onto }) => onto !== null),
      );
    case 'detach':
    case 'run':
      return one(
        'device',
        idsOf(desk.service.devices, ({ onto }) => onto !== null),
      );
    case 'coupler':
    case 'uncouple':
    case 'route':
      return one(
        'hose',
        idsOf(desk.hoses, ({ port }) => port !== null),
      );
    case 'close-loop':
      return one('part', opened);
    case 'replace':
      return one('part', opened.length > 0 ? opened : withoutJoints(parts));
    default:
      return {};
  }
}

function idsOf<T>(of: Readonly<Record<string, T>>, holds: (one: T) => boolean): string[] {
  return Object.keys(of).filter((id) => holds(of[id]));
}

/** Parts that are changed without undoing the loop. */
function withoutJoints(parts: PlantParts): string[] {
  return replaceable(parts).filter((part) => parts.places.every(({ id }) => id !== part));
}
