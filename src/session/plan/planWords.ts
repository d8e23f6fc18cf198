/**
 * A command or a wait in words, as a plan line, a key or a person at `sit` gives it: the command, then its arguments in
 * the order of the command table, parted by spaces; a list of zones is joined by commas and may be left out.
 *
 *   couple charging port-b side-middle,fender,mat        run-on 10 s
 */
import type { PlanLine, RepeatedLines, SingleLine } from '../../../shared/schema/plan';
import { WAITS, type Wait } from '../../../shared/schema/waits';
import { DEVICE_IDS } from '../../equipment/tools';
import type { ArgSpec, Command, CommandId } from '../../plant/commandSpecs';
import { parseQuantity } from '../../units/quantity';
import { STEPS_PER_SECOND } from '../clock';
import { argsOf, asCommand, type ShapeProblem, shapeProblem } from '../commandShape';

export type PlanAct =
  | { readonly kind: 'command'; readonly command: Command }
  | { readonly kind: 'wait'; readonly steps: number; readonly untilNotable: boolean; readonly times: number };

export type PlanReading = { readonly act: PlanAct } | { readonly problem: ShapeProblem };

/** "Until something happens" gives up after this long: an hour. */
export const LONGEST_WAIT_STEPS = 3600 * STEPS_PER_SECOND;

const UNTIL = 'until something happens';

/** A line, and where in the plan it is written. */
export interface PlacedLine {
  readonly line: SingleLine;
  readonly place: readonly (string | number)[];
}

/** A plan with its repeated lines written out. */
export const singleLines = (lines: readonly PlanLine[]): SingleLine[] =>
  placedLines(lines).map(({ line }) => line);

export function placedLines(lines: readonly PlanLine[]): PlacedLine[] {
  return lines.flatMap((line, at): PlacedLine[] => {
    if (typeof line === 'string' || !('repeat' in line)) return [{ line: line as SingleLine, place: [at] }];
    const { repeat, times } = line as RepeatedLines;
    const once = repeat.map((one, within) => ({ line: one, place: [at, 'repeat', within] }));
    return Array.from({ length: times }, () => once).flat();
  });
}

export function readPlanLine(line: SingleLine): PlanReading {
  if (typeof line === 'string') return readWords(line);
  if ('run-on' in line) {
    const { 'run-on': wait, times = 1 } = line as { 'run-on': Wait; times?: number };
    return { act: waitAct(wait, times) };
  }
  const [[id, given]] = Object.entries(line);
  const args = Object.entries(given as Record<string, string | number | readonly string[]>);
  return checked({ do: id, ...Object.fromEntries(args.map(([name, value]) => [name, flat(value)])) });
}

/** The same for one line of text; waits may be any whole number of steps here. */
export function readWords(text: string): PlanReading {
  const [first = '', ...rest] = text.trim().split(/\s+/);
  if (first === 'run-on' || (first === 'run' && !isDevice(rest[0]))) return readWait(rest.join(' '));
  return checked(commandOf(first, rest));
}

/** "run vacuum-pump on" is a command, "run 10 s" and "run until something happens" are waits. */
const isDevice = (word = ''): boolean => (DEVICE_IDS as readonly string[]).includes(word);

function readWait(text: string): PlanReading {
  if (text === UNTIL || text === '') return { act: waitAct(UNTIL, 1) };
  try {
    const steps = Math.round(parseQuantity(text, 'time') * STEPS_PER_SECOND);
    if (steps > 0) return { act: { kind: 'wait', steps, untilNotable: false, times: 1 } };
  } catch {
    // What could not be read is told below, with what could be.
  }
  return {
    problem: { reason: 'session.refused.noSuchWait', params: { given: text, known: WAITS.join(', ') } },
  };
}

function waitAct(wait: Wait, times: number): PlanAct {
  if (wait === UNTIL) return { kind: 'wait', steps: LONGEST_WAIT_STEPS, untilNotable: true, times };
  return {
    kind: 'wait',
    steps: Math.round(parseQuantity(wait, 'time') * STEPS_PER_SECOND),
    untilNotable: false,
    times,
  };
}

function commandOf(id: string, words: readonly string[]): Record<string, unknown> {
  const command: Record<string, unknown> = { do: id };
  if (shapeProblem({ do: id })?.reason.startsWith('session.refused.noSuchCommand')) return command;
  const specs = argsOf(id as CommandId);
  specs.forEach(([name, spec], at) => {
    if (words[at] !== undefined) command[name] = wordValue(spec, words[at]);
  });
  words.slice(specs.length).forEach((word, at) => {
    const name = word in command ? `word ${specs.length + at + 1}` : word;
    command[name] = word;
  });
  return command;
}

const wordValue = ({ kind }: ArgSpec, word: string): string | number =>
  kind === 'whole' && word !== '' && Number.isFinite(Number(word)) ? Number(word) : word;

const flat = (value: string | number | readonly string[]): string | number =>
  typeof value === 'object' ? value.join(',') : value;

/** A list of ids that was left out is empty. */
function checked(command: Record<string, unknown>): PlanReading {
  if (!shapeProblem({ do: command.do })?.reason.startsWith('session.refused.noSuchCommand')) {
    for (const [name, { kind }] of argsOf(command.do as CommandId)) if (kind === 'ids') command[name] ??= '';
  }
  const problem = shapeProblem(command);
  return problem ? { problem } : { act: { kind: 'command', command: asCommand(command) } };
}

/** A command as a plan would have it. */
export function wordsOf(command: Command): string {
  const words = argsOf(command.do).map(([name]) => String(command[name]));
  return [command.do, ...words].join(' ').trim();
}
