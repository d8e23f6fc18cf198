/** The whole deck: as many plants as there are steps for, what they covered, and what was found. */
import type { Command, CommandId } from '../commandSpecs';
import { COMMAND_IDS } from './drawCommand';
import { fuzzCase, fuzzPairs } from './fuzzCase';
import { type Coverage, fuzzPlant, noCoverage } from './fuzzPlant';
import { IMPOSSIBLE, type Impossible, whyImpossible } from './impossibleCells';
import { PLANT_STATES, type PlantState } from './plantStates';

/** Long enough for a car to come to rest; shorter where otherwise not every pair would have its turn. */
const LONGEST = 3000;
const SHORTEST = 250;

export interface FuzzReport {
  readonly steps: number;
  readonly plants: number;
  readonly done: number;
  readonly refused: number;
  /** Worst errors of the books in any plant, as shares; steps of a vessel whose pressure was not found in time. */
  readonly massError: number;
  readonly energyError: number;
  readonly unsolved: number;
  /** Pairs of faults on a vehicle that were met, of how many there are. */
  readonly pairs: { readonly met: number; readonly of: number };
  readonly coverage: Coverage;
  /** Cells of the coverage that should hold something and do not, and those that should not and do. */
  readonly empty: readonly string[];
  readonly surprising: readonly string[];
  /** Which cells a rule keeps empty, and which rule. */
  readonly impossible: readonly Impossible[];
  readonly findings: readonly Finding[];
}

export interface Finding {
  readonly index: number;
  readonly vehicleId: string;
  readonly faults: readonly string[];
  readonly what: string;
  /** What makes it again, alone. */
  readonly replay: string;
}

export function fuzzDeck(steps: number, seed: number): FuzzReport {
  const pairs = fuzzPairs(seed);
  const coverage = noCoverage();
  const each = Math.max(SHORTEST, Math.min(LONGEST, Math.floor(steps / pairs.length)));
  const findings: Finding[] = [];
  const sum = { steps: 0, plants: 0, done: 0, refused: 0, massError: 0, energyError: 0, unsolved: 0 };
  while (sum.steps < steps) {
    const index = sum.plants++;
    const one = fuzzCase(pairs, seed, index);
    const length = Math.min(each, steps - sum.steps);
    const run = guarded(() => fuzzPlant(one, length, [seed, index], coverage));
    sum.steps += Math.max(1, run.steps);
    sum.done += run.done;
    sum.refused += run.refused;
    sum.unsolved += run.unsolved;
    sum.massError = Math.max(sum.massError, run.massError);
    sum.energyError = Math.max(sum.energyError, run.energyError);
    if (run.finding === null) continue;
    const replay = `--steps ${length} --seed ${seed} --only ${index}`;
    findings.push({ index, ...one.pair, what: run.finding, replay });
  }
  return {
    ...sum,
    pairs: { met: Math.min(sum.plants, pairs.length), of: pairs.length },
    coverage,
    empty: cells((id, state) => coverage[id][state] === 0 && whyImpossible(id, state) === undefined),
    surprising: cells((id, state) => coverage[id][state] > 0 && whyImpossible(id, state) !== undefined),
    impossible: IMPOSSIBLE,
    findings,
  };
}

/** One plant of the deck alone, with everything that was done to it, as long as the deck played it. */
export function replayPlant(
  steps: number,
  seed: number,
  index: number,
): { readonly lines: readonly string[] } {
  const one = fuzzCase(fuzzPairs(seed), seed, index);
  const lines = [JSON.stringify(one)];
  const hear = (step: number, command: Command, done: boolean): void => {
    lines.push(`${step} ${JSON.stringify(command)}${done ? '' : ' refused'}`);
  };
  const run = guarded(() => fuzzPlant(one, Math.min(steps, LONGEST), [seed, index], noCoverage(), hear));
  lines.push(run.finding ?? 'nothing found');
  return { lines };
}

/** What is thrown is a finding too. */
function guarded(run: () => ReturnType<typeof fuzzPlant>): ReturnType<typeof fuzzPlant> {
  try {
    return run();
  } catch (error) {
    const nothing = { steps: 0, done: 0, refused: 0, massError: 0, energyError: 0, unsolved: 0 };
    return { ...nothing, finding: `threw ${String(error)}` };
  }
}

function cells(holds: (id: CommandId, state: PlantState) => boolean): string[] {
  return COMMAND_IDS.flatMap((id) =>
    PLANT_STATES.filter((state) => holds(id, state)).map((state) => `${id} x ${state}`),
  );
}
