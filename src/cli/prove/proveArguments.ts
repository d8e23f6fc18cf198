/**
 * What `prove` was asked: which scenarios, each with the places of its file where it is one, how many seeds, how many threads,
 * and how much may be spent.
 */
import { availableParallelism } from 'node:os';
import { readYaml, type YamlPath } from '../../../shared/schema/readYaml';
import { budgets } from '../../prover/budgets';
import type { ProofRequest } from '../../prover/proof';
import { readScenario } from '../../scoring/readScenario';
import { checkPhysics } from '../../session/check/checkPhysics';
import { checkTeaching } from '../../session/check/checkTeaching';
import { scenarios } from '../../session/scenario/library';
import { rubrics } from '../../session/scenario/rubrics';
import type { Scenario } from '../../session/scenario/scenario';
import { word } from '../../words/words';
import type { Io } from '../io';
import { isFileName, scenarioArgument } from '../scenarioArgument';
import { UsageError } from '../verb';

export interface ToProve {
  readonly scenario: Scenario;
  /** `file:line:column` of a place in it; its id where it ships. */
  readonly at: (path: YamlPath) => string;
  readonly isFile: boolean;
}

const SEEDS = 20;
const MOST_SEEDS = 1000;
const THREADS = 2;
const MOST_THREADS = 64;

export function toProve(operands: readonly string[], library: boolean, io: Io): readonly ToProve[] {
  if (library && operands.length > 0) throw new UsageError(word('prove.verb.notBoth'));
  if (library) return scenarios.map(shipped);
  if (operands.length === 0) throw new UsageError(word('prove.verb.what'));
  return operands.map((given) => {
    if (!isFileName(given)) return shipped(scenarioArgument(given, io));
    const text = io.readFile(given);
    return { scenario: checkedIn(given, text), at: readYaml(given, text).at, isFile: true };
  });
}

/** A file that `check` finds errors in is not proved; its plans are played by the proof itself. */
function checkedIn(file: string, text: string): Scenario {
  const { problems, formed, ready } = readScenario(file, text, rubrics);
  if (formed && ready) {
    checkPhysics(formed.data, ready.plant, formed.findings);
    checkTeaching(formed.data, formed.findings);
  }
  const found = new Set([...problems, ...(formed?.findings.list ?? [])]);
  const errors = [...found].filter(({ level }) => level === 'error');
  if (ready && errors.length === 0) return ready.scenario;
  throw new UsageError(errors.map(({ at, code, message }) => `${at} ${code} ${message}`).join('\n'));
}

const shipped = (scenario: Scenario): ToProve => ({
  scenario,
  at: () => scenario.data.id,
  isFile: false,
});

export const requestOf = (seeds: string | undefined, full: boolean, library: boolean): ProofRequest => ({
  seeds: wholeOption('seeds', seeds, SEEDS, MOST_SEEDS),
  budgetSteps: full ? null : library ? budgets.library : budgets.usual,
});

export const threadsOf = (given: string | undefined): number =>
  wholeOption('threads', given, Math.min(THREADS, availableParallelism()), MOST_THREADS);

function wholeOption(name: string, given: string | undefined, otherwise: number, most: number): number {
  if (given === undefined) return otherwise;
  const value = Number(given);
  if (/^\d+$/.test(given) && value >= 1 && value <= most) return value;
  throw new UsageError(word('prove.verb.notWhole', { name, given, most: String(most) }));
}
