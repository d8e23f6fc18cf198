/** Do the lines of a plan say something that could be done in this car: commands, arguments, ids. */
import type { PlanLine, RepeatedLines, SingleLine } from '../../../shared/schema/plan';
import type { YamlPath } from '../../../shared/schema/readYaml';
import type { Command } from '../../plant/commandSpecs';
import type { Plant } from '../../plant/plantPort';
import { unitMeant } from '../../units/unitMeant';
import { nearest } from '../../words/nearest';
import { isWordId, say, word } from '../../words/words';
import { argsOf } from '../commandShape';
import { readPlanLine } from '../plan/planWords';
import type { Findings, Meant } from './findings';

export function checkPlanWords(
  lines: readonly PlanLine[],
  path: YamlPath,
  plant: Plant,
  findings: Findings,
): void {
  lines.forEach((line, at) => {
    if (typeof line === 'string' || !('repeat' in line))
      checkLine(line as SingleLine, [...path, at], plant, findings);
    else {
      const { repeat } = line as RepeatedLines;
      repeat.forEach((inner, below) => {
        checkLine(inner, [...path, at, 'repeat', below], plant, findings);
      });
    }
  });
}

function checkLine(line: SingleLine, path: YamlPath, plant: Plant, findings: Findings): void {
  const reading = readPlanLine(line);
  if ('problem' in reading) {
    const { reason, params } = reading.problem;
    const told = isWordId(reason) ? say({ id: reason, values: params }) : reason;
    const meant = meantBy(params);
    const isTold = meant === null || params.near !== undefined;
    findings.error(path, 'SCN110', isTold ? told : word('check.near', { what: told, near: meant.to }), meant);
  } else if (reading.act.kind === 'command') checkIds(reading.act.command, path, plant, findings);
}

/** The word that is wrong, and the known one it is near to. */
function meantBy(params: Readonly<Record<string, string>>): Meant | null {
  const { near, name, command, given, known } = params;
  if (near !== undefined) return { part: name ?? command, to: near };
  if (given === undefined || known === undefined) return null;
  const to = nearest(given, known.split(', ')) ?? unitMeant(given, 'time');
  return to === undefined ? null : { part: given, to };
}

function checkIds(command: Command, path: YamlPath, plant: Plant, findings: Findings): void {
  for (const [name, spec] of argsOf(command.do)) {
    if (spec.kind !== 'id' && spec.kind !== 'ids') continue;
    const known = plant.choices(spec.of);
    const given = String(command[name])
      .split(',')
      .filter((id) => id !== '');
    for (const id of given.filter((one) => !known.includes(one))) {
      findings.unknown(path, 'SCN111', word('check.noSuchId', { kind: spec.of, id }), id, known);
    }
  }
}
