/** Do the lines of a plan say something that could be done: commands and arguments, ids of this car, and no longer than a day's work. */
import { PLANS, type PlanLine, type SingleLine } from '../../../shared/schema/plan';
import type { YamlPath } from '../../../shared/schema/readYaml';
import type { ScenarioData } from '../../../shared/schema/scenario';
import { unitMeant } from '../../../shared/schema/unitMeant';
import type { Command } from '../../plant/commandSpecs';
import type { Plant } from '../../plant/plantPort';
import { nearest } from '../../words/nearest';
import { isWordId, say, word } from '../../words/words';
import { STEPS_PER_MINUTE } from '../clock';
import { argsOf } from '../commandShape';
import { readPlanLine } from '../plan/planWords';
import { type Findings, type Meant, withNear } from './findings';
import type { Sound } from './soundKeys';

/** Of one plan, written out: [guess], three times the longest that ships. */
const MOST_MINUTES = 600;
const MOST_LINES = 2_000;
/** "Until something happens" counts as this much. */
const UNTIL_MINUTES = 5;

interface PlacedLine {
  readonly line: SingleLine;
  readonly path: YamlPath;
  readonly times: number;
}

/** Of all plans, those whose form is right. */
export function linesOf(data: ScenarioData, sound: Sound): PlacedLine[] {
  return PLANS.flatMap((plan) => placedLines(data.plans?.[plan], ['plans', plan], sound));
}

function placedLines(lines: unknown, path: YamlPath, sound: Sound): PlacedLine[] {
  if (!Array.isArray(lines)) return [];
  return (lines as PlanLine[]).flatMap((line, at) => {
    const here = [...path, at];
    if (typeof line !== 'object' || line === null || !('repeat' in line))
      return sound.at(here) ? [{ line: line as SingleLine, path: here, times: 1 }] : [];
    const { repeat, times } = line as { repeat: unknown; times: unknown };
    const inner = placedLines(repeat, [...here, 'repeat'], sound);
    return inner.map((one) => ({ ...one, times: typeof times === 'number' ? times : 1 }));
  });
}

export function checkPlanWords(data: ScenarioData, sound: Sound, findings: Findings): void {
  for (const { line, path } of linesOf(data, sound)) checkLine(line, path, findings);
  for (const plan of PLANS)
    checkLength(placedLines(data.plans?.[plan], ['plans', plan], sound), plan, findings);
}

function checkLine(line: SingleLine, path: YamlPath, findings: Findings): void {
  const reading = readPlanLine(line);
  if (!('problem' in reading)) return;
  const { reason, params } = reading.problem;
  const told = isWordId(reason) ? say({ id: reason, values: params }) : reason;
  const meant = meantBy(params);
  const isTold = meant === null || params.near !== undefined;
  findings.error(path, 'SCN110', isTold ? told : withNear(told, meant.to), meant);
}

/** A plan of years would be played for minutes. */
function checkLength(lines: readonly PlacedLine[], plan: string, findings: Findings): void {
  let count = 0;
  let minutes = 0;
  for (const { line, times } of lines) {
    count += times;
    const reading = readPlanLine(line);
    if ('problem' in reading || reading.act.kind !== 'wait') continue;
    const { steps, untilNotable, times: waits } = reading.act;
    minutes += times * waits * (untilNotable ? UNTIL_MINUTES : steps / STEPS_PER_MINUTE);
  }
  if (count > MOST_LINES)
    findings.error(
      ['plans', plan],
      'SCN112',
      word('check.planLines', { lines: String(count), most: String(MOST_LINES) }),
    );
  if (minutes > MOST_MINUTES) {
    const values = { minutes: String(Math.ceil(minutes)), most: String(MOST_MINUTES) };
    findings.error(['plans', plan], 'SCN113', word('check.planMinutes', values));
  }
}

/** The word that is wrong, and the known one it is near to. */
function meantBy(params: Readonly<Record<string, string>>): Meant | null {
  const { near, name, command, given, known } = params;
  if (near !== undefined) return { part: name ?? command, to: near };
  if (given === undefined || known === undefined) return null;
  const to = nearest(given, known.split(', ')) ?? unitMeant(given, 'time');
  return to === undefined ? null : { part: given, to };
}

/** Ids of a line against what this car and bench have. */
export function checkLineIds(line: SingleLine, path: YamlPath, plant: Plant, findings: Findings): void {
  const reading = readPlanLine(line);
  if ('problem' in reading || reading.act.kind !== 'command') return;
  const command: Command = reading.act.command;
  for (const [name, spec] of argsOf(command.do)) {
    if (spec.kind !== 'id' && spec.kind !== 'ids') continue;
    const known = plant.choices(spec.of);
    const given = String(command[name])
      .split(',')
      .filter((id) => id !== '');
    for (const id of given.filter((one) => !known.includes(one)))
      findings.unknown(path, 'SCN111', word('check.noSuchId', { kind: spec.of, id }), id, known);
  }
}
