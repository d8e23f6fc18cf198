/**
 * The same session with something done otherwise: both run from the start, both scored, and the first step after which
 * their states differ. States are compared once a second; the second in which they part is run once more, step by step.
 */
import { STEPS_PER_SECOND } from '../session/clock';
import type { SessionCore, SessionLog } from '../session/corePort';
import { openSession, recordOf } from '../session/openSession';
import type { Scenario } from '../session/scenario/scenario';
import { editLog, type LogEdit, type NumberedCommand, numberedCommands } from '../session/whatIf/editLog';
import { playCommands, type RefusedCommand } from '../session/whatIf/playCommands';
import { type Score, score } from './score';

export interface WhatIfRun {
  readonly score: Score;
  readonly stateHash: string;
  readonly lastStep: number;
}

export interface WhatIf {
  readonly before: WhatIfRun;
  readonly after: WhatIfRun;
  /** Steps done when the two are first not alike; null where they are to the end. */
  readonly firstDifferentStep: number | null;
  /** What can no longer be done. */
  readonly refused: readonly RefusedCommand[];
}

interface Played {
  readonly core: SessionCore;
  readonly refused: readonly RefusedCommand[];
  readonly hashes: readonly string[];
}

/** Throws `EditError` for an edit that cannot be made. */
export function whatIf(scenario: Scenario, log: SessionLog, edits: readonly LogEdit[]): WhatIf {
  const entries = numberedCommands(log);
  const edited = editLog(entries, edits);
  const [before, after] = [entries, edited].map((list) => play(scenario, log, list));
  return {
    before: runOf(scenario, before),
    after: runOf(scenario, after),
    firstDifferentStep: firstDifferent(scenario, log, [entries, edited], [before, after]),
    refused: after.refused,
  };
}

function play(
  scenario: Scenario,
  { mode, seed, lastStep }: SessionLog,
  list: readonly NumberedCommand[],
): Played {
  const core = openSession(scenario, { mode, seed });
  const hashes: string[] = [];
  const keep = (): void => void hashes.push(core.stateHash());
  const refused = playCommands(core, list, lastStep, keep, STEPS_PER_SECOND);
  return { core, refused, hashes };
}

function runOf(scenario: Scenario, { core }: Played): WhatIfRun {
  return {
    score: score(recordOf(scenario, core.log()), scenario),
    stateHash: core.stateHash(),
    lastStep: core.step,
  };
}

function firstDifferent(
  scenario: Scenario,
  { mode, seed, lastStep }: SessionLog,
  lists: readonly (readonly NumberedCommand[])[],
  [before, after]: readonly Played[],
): number | null {
  const seconds = Math.max(before.hashes.length, after.hashes.length);
  const second = Array.from({ length: seconds }, (_, at) => at).find(
    (at) => before.hashes[at] !== after.hashes[at],
  );
  if (second === undefined) return null;
  const from = second * STEPS_PER_SECOND;
  const end = Math.min(lastStep, from + STEPS_PER_SECOND);
  const [old, other] = lists.map((list) => {
    const core = openSession(scenario, { mode, seed });
    const steps = new Map<number, string>();
    const keep = (): void => void (core.step >= from && steps.set(core.step, core.stateHash()));
    const upTo = list.filter(({ step }) => step <= end);
    playCommands(core, upTo, end, keep, 1);
    return steps;
  });
  const apart = [...new Set([...old.keys(), ...other.keys()])].sort((a, b) => a - b);
  return apart.find((step) => old.get(step) !== other.get(step)) ?? null;
}
