/**
 * Random hands on a plant: every command there is, with arguments drawn from what the plant offers, and time between
 * them. What must never happen is looked for after every stretch: a number that is none, a negative mass, books that do
 * not balance. The draws are keyed, so a seed that fails is a case to keep.
 */
import { layoutOf } from '../layout/layouts';
import { keyedUniform } from '../numerics/keyedRandom';
import { buildPlant, type PlantOptions } from './buildPlant';
import { type ArgSpec, type Command, type CommandId, type CommandSpec, commandSpecs } from './commandSpecs';
import type { Plant } from './plantPort';

export interface FuzzReport {
  readonly steps: number;
  readonly commandsDone: number;
  readonly commandsRefused: number;
  /** What went wrong first, with the step; null when nothing did. */
  readonly finding: string | null;
  readonly commandCounts: Readonly<Partial<Record<CommandId, number>>>;
}

const MOST_BETWEEN = 120;
const OFTEN: ReadonlySet<string> = new Set(['connect', 'charge', 'service', 'car']);
const MOSTLY = 0.85;
const MASS_TOLERANCE = 1e-11;
const ENERGY_TOLERANCE = 1e-10;

/** Runs `steps` steps with random commands between them. */
export function fuzzPlant(options: PlantOptions, steps: number, seed: number): FuzzReport {
  const plant = buildPlant(options);
  const counts: Partial<Record<CommandId, number>> = {};
  const ids = weighted();
  let done = 0;
  let refused = 0;
  let draw = 0;
  const next = (): number => keyedUniform(seed, 'fuzz', options.vehicleId, draw++);
  while (plant.step < steps) {
    const command = drawCommand(plant, options.vehicleId, ids[Math.floor(next() * ids.length)], next);
    if (plant.apply(command).ok) {
      done++;
      counts[command.do] = (counts[command.do] ?? 0) + 1;
    } else refused++;
    const stretch = next() < 0.5 ? 1 : Math.ceil(next() * MOST_BETWEEN);
    for (let i = 0; i < stretch && plant.step < steps; i++) plant.advance();
    const finding = fault(plant);
    if (finding) {
      const where = `step ${plant.step}, after ${JSON.stringify(command)}: ${finding}`;
      return {
        steps: plant.step,
        commandsDone: done,
        commandsRefused: refused,
        finding: where,
        commandCounts: counts,
      };
    }
  }
  return {
    steps: plant.step,
    commandsDone: done,
    commandsRefused: refused,
    finding: null,
    commandCounts: counts,
  };
}

/** Every command, those that join and feed things five times: most need another one first. */
function weighted(): CommandId[] {
  const all = Object.keys(commandSpecs) as CommandId[];
  return all.flatMap((id) => Array<CommandId>(OFTEN.has(commandSpecs[id].group) ? 5 : 1).fill(id));
}

function drawCommand(plant: Plant, vehicleId: string, id: CommandId, next: () => number): Command {
  // under a shut hood nothing can be joined
  if (id === 'hood' && next() < MOSTLY) return { do: id, to: 'open' };
  const spec: CommandSpec = commandSpecs[id];
  const args = Object.entries(spec.args).map(([name, arg]) => [
    name,
    drawArgument(plant, vehicleId, name, arg, next),
  ]);
  return { do: id, ...Object.fromEntries(args) };
}

function drawArgument(
  plant: Plant,
  vehicleId: string,
  name: string,
  arg: ArgSpec,
  next: () => number,
): string | number {
  if (arg.kind === 'whole') {
    const count = Math.floor((arg.max - arg.min) / arg.step) + 1;
    // an engine that stands half the time, a valve that is often shut
    const low = next() < 0.3 && (name === 'rpm' || name === 'turn') ? 0 : next();
    return arg.min + arg.step * Math.floor(low * count);
  }
  const of = arg.kind === 'choice' ? arg.of : plant.choices(arg.of);
  const pick = (): string => of[Math.floor(next() * of.length)] ?? '';
  if (arg.kind !== 'ids') return pick();
  // a way that some port has: through the fan or over the belt as often as over the fender
  const ways = layoutOf(vehicleId).routes.map(({ through }) => through.join(','));
  return ways[Math.floor(next() * ways.length)] ?? '';
}

function fault(plant: Plant): string | null {
  for (const [id, kg] of Object.entries(plant.books().massByVesselKg)) {
    if (!(kg >= 0)) return `${id} holds ${kg} kg`;
  }
  const { massErrorRelative, energyErrorRelative } = plant.books();
  if (!(massErrorRelative < MASS_TOLERANCE)) return `mass error ${massErrorRelative}`;
  if (!(energyErrorRelative < ENERGY_TOLERANCE)) return `energy error ${energyErrorRelative}`;
  for (let i = 0; i < plant.signals.length; i++) {
    const { id, kind } = plant.signals[i];
    const value = plant.value(i);
    if (kind !== 'reading' && !(value > -1e12 && value < 1e12)) return `${id} is ${value}`;
  }
  return null;
}
