/**
 * Random hands on one plant: every command there is, with time between them. Those that were tried least in the present
 * state come first, and now and then what they need is done before. All draws are keyed, so seed and index make it again.
 */
import { AT } from '../../loop/car/carNumbers';
import { assemblePlant, type PlantParts } from '../assemblePlant';
import type { Command, CommandId } from '../commandSpecs';
import { makeExecutive } from '../executive';
import type { Plant } from '../plantPort';
import { checkPlant } from './checkPlant';
import { COMMAND_IDS, drawCommand } from './drawCommand';
import { type Draw, drawer, type FuzzCase, pick } from './fuzzCase';
import { whyImpossible } from './impossibleCells';
import { before, towards } from './leadingDeeds';
import { PLANT_STATES, type PlantState, plantState } from './plantStates';

/** Commands done, by command and by the state they met. */
export type Coverage = Record<CommandId, Record<PlantState, number>>;

export interface PlantRun {
  readonly steps: number;
  readonly done: number;
  readonly refused: number;
  /** Worst of its species and energy at the end; vessels' steps whose pressure was not found. */
  readonly massError: number;
  readonly energyError: number;
  readonly unsolved: number;
  /** What went wrong first, with the step; null when nothing did. */
  readonly finding: string | null;
}

/** Told of every command with the step it came at and whether it was done. */
export type Heard = (step: number, command: Command, done: boolean) => void;

const MOST_BETWEEN = 120;
/** That state passes by itself within seconds. */
const MOST_WHILE_TRIPPED = 8;
const BACK_TO_AIM = 0.06;
const PREPARED = 0.4;
const LEAST_TRIED = 0.7;
const TRIES = 3;
const STEPS_AGAIN = 10;
const STEPS_OF_LICENSED = 20;
/** Reading books and signals takes as long as several steps. */
const ALL_READ = 0.3;

export function noCoverage(): Coverage {
  const row = () => Object.fromEntries(PLANT_STATES.map((state) => [state, 0]));
  return Object.fromEntries(COMMAND_IDS.map((id) => [id, row()])) as Coverage;
}

export function fuzzPlant(
  { aim, options }: FuzzCase,
  steps: number,
  [seed, index]: readonly [number, number],
  coverage: Coverage,
  hear: Heard = () => {},
): PlantRun {
  const parts = assemblePlant(options);
  const plant = makeExecutive(parts);
  if (aim === 'seized') parts.car.network.reserve[AT.wearHeat] = 1;
  const hands = makeHands(plant, parts, coverage, drawer(seed, index, 'hands'), hear);
  hands.lead(aim);
  let finding: string | null = null;
  while (plant.step < steps && finding === null) {
    const last = hands.act(aim);
    const most = plantState(parts) === 'tripped' ? MOST_WHILE_TRIPPED : MOST_BETWEEN;
    passTime(plant, steps, most, hands.next);
    finding = hands.odd() ?? checkPlant(plant, parts, hands.next() < ALL_READ || plant.step >= steps);
    if (finding) finding = `step ${plant.step}, after ${JSON.stringify(last)}: ${finding}`;
  }
  const books = parts.car.network.books();
  return {
    steps: plant.step,
    ...hands.counts(),
    massError: books.massErrorRelative,
    energyError: books.energyErrorRelative,
    unsolved: books.unsolvedSteps,
    finding,
  };
}

function passTime(plant: Plant, steps: number, most: number, next: Draw): void {
  const stretch = next() < 0.5 ? 1 : Math.ceil(next() * most);
  for (let i = 0; i < stretch && plant.step < steps; i++) plant.advance();
}

interface Hands {
  readonly next: Draw;
  lead(aim: PlantState): void;
  /** One command, with what it needs before it; the last that was given. */
  act(aim: PlantState): Command;
  /** What a command did that it must not. */
  odd(): string | null;
  counts(): { readonly done: number; readonly refused: number };
}

function makeHands(plant: Plant, parts: PlantParts, coverage: Coverage, next: Draw, hear: Heard): Hands {
  const tried = noCoverage();
  let done = 0;
  let refused = 0;
  let odd: string | null = null;

  function give(command: Command): boolean {
    const state = plantState(parts);
    const { step } = plant;
    tried[command.do][state]++;
    const ok = plant.apply(command).ok;
    hear(step, command, ok);
    if (!ok) {
      refused++;
      return false;
    }
    done++;
    coverage[command.do][state]++;
    if (command.do === 'rewind') odd ??= oddRewind(plant);
    return true;
  }

  function least(): CommandId {
    const state = plantState(parts);
    const possible = COMMAND_IDS.filter((id) => whyImpossible(id, state) === undefined);
    const fewest = Math.min(...possible.map((id) => tried[id][state]));
    return pick(
      possible.filter((id) => tried[id][state] === fewest),
      next,
    );
  }

  return {
    next,
    lead: (aim) => towards(aim, parts, next).forEach(give),
    act(aim) {
      if (next() < BACK_TO_AIM) towards(aim, parts, next).forEach(give);
      const id = next() < LEAST_TRIED ? least() : pick(COMMAND_IDS, next);
      if (next() < PREPARED) before(id, parts, next).forEach(give);
      let command = drawCommand(plant, parts, id, next);
      for (let i = 1; !give(command) && i < TRIES; i++) command = drawCommand(plant, parts, id, next);
      hurryLicensed(parts, plant.step);
      return command;
    },
    odd: () => odd,
    counts: () => ({ done, refused }),
  };
}

/** Whoever is licensed is done within a second, or nobody else had a turn. */
function hurryLicensed({ desk }: PlantParts, step: number): void {
  const { licensed } = desk.tasks;
  if (licensed) licensed.untilStep = Math.min(licensed.untilStep, step + STEPS_OF_LICENSED);
}

/** Going back gives exactly what was, and from there the same again. */
function oddRewind(plant: Plant): string | null {
  const kept = plant.snapshot();
  const was = plant.stateHash();
  const later = hashAfter(plant, STEPS_AGAIN);
  plant.restore(kept);
  if (plant.stateHash() !== was) return 'going back gives another state';
  return hashAfter(plant, STEPS_AGAIN) === later ? null : 'the same steps again give another state';
}

function hashAfter(plant: Plant, steps: number): string {
  for (let i = 0; i < steps; i++) plant.advance();
  return plant.stateHash();
}
