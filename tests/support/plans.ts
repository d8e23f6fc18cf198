/** Plays a shipped scenario's plan the way the command line does, without the command line. */
import type { PlanLine } from '../../shared/schema/plan';
import { sayFinding } from '../../src/scoring/sayFinding';
import { type Score, score } from '../../src/scoring/score';
import type { Mode, SessionCore } from '../../src/session/corePort';
import { openRecorded } from '../../src/session/openRecorded';
import { playPlan, type RefusedLine } from '../../src/session/plan/playPlan';
import type { SessionRecord } from '../../src/session/record/record';
import type { Scenario } from '../../src/session/scenario/scenario';

export interface Played {
  readonly core: SessionCore;
  readonly record: SessionRecord;
  readonly score: Score;
  readonly refused: readonly RefusedLine[];
  readonly sentences: readonly string[];
}

export function played(
  scenario: Scenario,
  lines: readonly PlanLine[],
  mode: Mode = 'assessed',
  seed = 1,
): Played {
  const { core, record: recordNow } = openRecorded(scenario, mode, seed);
  const refused = playPlan(core, lines);
  const record = recordNow();
  const result = score(record, scenario);
  return {
    core,
    record,
    score: result,
    refused,
    sentences: result.findings.map((finding) => sayFinding(finding)),
  };
}
