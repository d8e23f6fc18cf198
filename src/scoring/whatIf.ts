/**
 * The same session with something done otherwise: both scored, and the first step after which their states differ. What
 * ghost cars said of the readings is not weighed again: where it is handed over it counts as it did.
 */
import type { SessionLog } from '../session/corePort';
import type { MeasureId } from '../session/record/measures';
import type { SessionRecord } from '../session/record/record';
import type { Scenario } from '../session/scenario/scenario';
import { editLog, type LogEdit } from '../session/whatIf/editLog';
import type { LivedOnce } from '../session/whatIf/livedOnce';
import { openReruns, type Reruns } from '../session/whatIf/openReruns';
import type { RefusedCommand } from '../session/whatIf/playEntries';
import { toEnd } from '../session/whatIf/toEnd';
import { type Score, score } from './score';

export interface WhatIfRun {
  readonly score: Score;
  readonly stateHash: string;
  readonly lastStep: number;
  readonly record: SessionRecord;
}

export interface WhatIf {
  readonly before: WhatIfRun;
  readonly after: WhatIfRun;
  /** Steps done when the two are first not alike; null where they are to the end. */
  readonly firstDifferentStep: number | null;
  /** What can no longer be done. */
  readonly refused: readonly RefusedCommand[];
  /** Steps that had to be run for it. */
  readonly stepsRun: number;
}

/** Measures that ghost cars weighed; null before they have, or where there was nothing to weigh. */
export type WeighedMeasures = Readonly<Partial<Record<MeasureId, number>>> | null;

/** Throws `EditError` for an edit that cannot be made. */
export function whatIf(scenario: Scenario, log: SessionLog, edits: readonly LogEdit[]): WhatIf {
  const reruns = toEnd(openReruns(scenario, log));
  return toEnd(tryOut(scenario, reruns, edits, null));
}

/** The same on a session that is made ready, in stretches. Throws `EditError`. */
export function* tryOut(
  scenario: Scenario,
  { once, again }: Reruns,
  edits: readonly LogEdit[],
  weighed: WeighedMeasures,
): Generator<void, WhatIf> {
  const other = yield* again(editLog(once.entries, edits));
  return {
    before: beforeOf(scenario, once, weighed),
    after: runOf(scenario, other, weighed),
    firstDifferentStep: other.firstDifferentStep,
    refused: other.refused,
    stepsRun: other.stepsRun,
  };
}

/** What was lived is scored once, and once more where ghosts have weighed it since. */
const lived = new WeakMap<LivedOnce, { readonly weighed: string; readonly run: WhatIfRun }>();

function beforeOf(scenario: Scenario, once: LivedOnce, weighed: WeighedMeasures): WhatIfRun {
  const kept = lived.get(once);
  const as = JSON.stringify(weighed);
  if (kept?.weighed === as) return kept.run;
  const run = runOf(scenario, once, weighed);
  lived.set(once, { weighed: as, run });
  return run;
}

function runOf(
  scenario: Scenario,
  { record, stateHash, lastStep }: Omit<WhatIfRun, 'score'>,
  weighed: WeighedMeasures,
): WhatIfRun {
  return { score: score(withWeighed(record, weighed), scenario), stateHash, lastStep, record };
}

/** Who named no cause has nothing justified. */
function withWeighed(record: SessionRecord, weighed: WeighedMeasures): SessionRecord {
  if (weighed === null) return record;
  const hasNamed = record.events.some(({ id }) => id === 'diagnosed');
  const shares = { 'diagnosis.justified': 0, 'diagnosis.efficient': 0, 'diagnosis.noiseless': 0 };
  return { ...record, measures: { ...record.measures, ...weighed, ...(hasNamed ? {} : shares) } };
}
