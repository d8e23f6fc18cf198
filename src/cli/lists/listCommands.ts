/** Commands with their arguments, in the order they are typed, and what each may be on which vehicle with a full bench. */
import { vehicleIds } from '../../loop/car/vehicles';
import {
  type ArgSpec,
  type CommandId,
  type CommandSpec,
  commandSpecs,
  type IdSet,
} from '../../plant/commandSpecs';
import type { Plant } from '../../plant/plantPort';
import { fullPlant } from './fullPlant';

type Choices = Readonly<Record<string, readonly string[]>>;

export function listCommands() {
  const plants = vehicleIds.map((id) => [id, fullPlant(id)] as const);
  const known = new Map<IdSet, Choices>();
  const choicesOf = (set: IdSet): Choices => {
    const found = known.get(set) ?? byVehicle(plants, set);
    known.set(set, found);
    return found;
  };
  const argument = ([name, spec]: [string, ArgSpec]) => ({
    name,
    ...spec,
    ...(spec.kind === 'id' || spec.kind === 'ids' ? { may: choicesOf(spec.of) } : {}),
  });
  return (Object.keys(commandSpecs) as CommandId[]).map((id) => {
    const { group, args }: CommandSpec = commandSpecs[id];
    return { id, group, args: Object.entries(args).map(argument) };
  });
}

/** One list under `any` where it is the same on every vehicle. */
function byVehicle(plants: readonly (readonly [id: string, plant: Plant])[], set: IdSet): Choices {
  const lists = plants.map(([id, plant]) => [id, plant.choices(set)] as const);
  const [[, first]] = lists;
  const same = lists.every(([, list]) => list.join() === first.join());
  return same ? { any: first } : Object.fromEntries(lists);
}
