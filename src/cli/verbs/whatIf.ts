/** `what-if FILE`: a saved session with an action left out, moved or changed: both scores, and where the two part. */
import { sayFinding } from '../../scoring/sayFinding';
import type { Score } from '../../scoring/score';
import { type WhatIf, type WhatIfRun, whatIf } from '../../scoring/whatIf';
import { STEPS_PER_SECOND } from '../../session/clock';
import type { SessionLog } from '../../session/corePort';
import { engineHash } from '../../session/engineHash';
import { wordsOf } from '../../session/plan/planWords';
import type { Scenario } from '../../session/scenario/scenario';
import { readSessionFile } from '../../session/sessionFile';
import { EditError, type LogEdit, numberedCommands } from '../../session/whatIf/editLog';
import { sayRefusal } from '../../twin/hear';
import { parseQuantity, QuantityError } from '../../units/quantity';
import { word } from '../../words/words';
import type { Io } from '../io';
import { scenarioOfLog } from '../scenarioOfLog';
import { printedScore } from '../scoredSession';
import { defineVerb, UsageError } from '../verb';

export default defineVerb({
  name: 'what-if',
  summary: 'verbs.whatIf.summary',
  options: {
    drop: { kind: 'text', many: true, example: '12', summary: 'verbs.whatIf.drop' },
    move: { kind: 'text', many: true, example: '12=+30s', summary: 'verbs.whatIf.move' },
    set: { kind: 'text', many: true, example: '12.turn=4', summary: 'verbs.whatIf.set' },
    scenario: { kind: 'text', example: 'FILE', summary: 'verbs.replay.scenario' },
    json: { kind: 'flag', summary: 'cli.json' },
  },
  operands: [{ name: 'FILE', required: true }],
  run({ options: { drop, move, set, scenario: given }, operands: [file] }, io) {
    const log = readLog(file, io.readFile(file));
    const scenario = scenarioOrUsage(file, log, given, io);
    const edits = [...drop.map(dropOf), ...move.map(moveOf), ...set.map(setOf)];
    const head = { scenario: log.scenarioId, seed: log.seed, mode: log.mode };
    io.json(
      edits.length === 0
        ? { ...head, actions: actionsOf(log) }
        : { ...head, ...parted(scenario, log, edits) },
    );
    return 0;
  },
});

/** What there is to edit, under the numbers that edits name. */
const actionsOf = (log: SessionLog) =>
  numberedCommands(log).map(({ number, step, command }) => ({ number, step, action: wordsOf(command) }));

function parted(scenario: Scenario, log: SessionLog, edits: readonly LogEdit[]) {
  const found = tried(scenario, log, edits);
  const { before, after, firstDifferentStep, refused } = found;
  return {
    before: printed(before),
    after: printed(after),
    sameState: before.stateHash === after.stateHash,
    firstDifferentStep,
    changedRules: changedRules(before.score, after.score),
    refused: refused.map(({ number, step, command, reason, params }) => ({
      number,
      step,
      action: wordsOf(command),
      reason: sayRefusal(reason, params),
    })),
  };
}

function tried(scenario: Scenario, log: SessionLog, edits: readonly LogEdit[]): WhatIf {
  try {
    return whatIf(scenario, log, edits);
  } catch (error) {
    if (!(error instanceof EditError)) throw error;
    const number = String(error.number);
    if (error.problem === null) throw new UsageError(word('verbs.whatIf.noAction', { number }));
    const reason = sayRefusal(error.problem.reason, error.problem.params);
    throw new UsageError(word('verbs.whatIf.badValue', { number, reason }));
  }
}

const printed = ({ score, stateHash, lastStep }: WhatIfRun) => {
  const { findings: _findings, ...rest } = printedScore(score);
  return { ...rest, stateHash, minutes: lastStep / STEPS_PER_SECOND / 60 };
};

/** Rules that went another way or earned another share, as each of the two tells it. */
function changedRules(before: Score, after: Score) {
  return before.findings.flatMap((old, at) => {
    const now = after.findings[at];
    if (old.status === now.status && old.earned === now.earned) return [];
    return [{ rule: old.rule, before: sayFinding(old), after: sayFinding(now) }];
  });
}

const EDITED = /^(\d+)(?:\.([A-Za-z]+))?(?:=(.*))?$/;

function partsOf(given: string): {
  readonly number: number;
  readonly name?: string;
  readonly value?: string;
} {
  const match = EDITED.exec(given);
  if (match === null) throw new UsageError(word('verbs.whatIf.notEdit', { given }));
  const [, number, name, value] = match;
  return {
    number: Number(number),
    ...(name === undefined ? {} : { name }),
    ...(value === undefined ? {} : { value }),
  };
}

function dropOf(given: string): LogEdit {
  const { number, name, value } = partsOf(given);
  if (name !== undefined || value !== undefined)
    throw new UsageError(word('verbs.whatIf.notEdit', { given }));
  return { kind: 'drop', number };
}

function moveOf(given: string): LogEdit {
  const { number, name, value } = partsOf(given);
  if (name !== undefined || value === undefined)
    throw new UsageError(word('verbs.whatIf.notEdit', { given }));
  try {
    return { kind: 'move', number, bySteps: Math.round(parseQuantity(value, 'time') * STEPS_PER_SECOND) };
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error;
    throw new UsageError(error.message);
  }
}

function setOf(given: string): LogEdit {
  const { number, name, value } = partsOf(given);
  if (name === undefined || value === undefined)
    throw new UsageError(word('verbs.whatIf.notEdit', { given }));
  return { kind: 'set', number, name, value };
}

function readLog(file: string, text: string): SessionLog {
  try {
    return readSessionFile(text).log;
  } catch (error) {
    throw new UsageError(word('verbs.replay.badFile', { file, reason: (error as Error).message }));
  }
}

function scenarioOrUsage(file: string, log: SessionLog, given: string | undefined, io: Io): Scenario {
  const scenario = scenarioOfLog(log, given, io);
  if (log.engineHash !== engineHash || log.scenarioHash !== scenario.hash)
    throw new UsageError(word('verbs.whatIf.other', { file }));
  return scenario;
}
