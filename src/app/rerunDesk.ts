/**
 * The worker's side of what-if: makes a finished session ready and runs it otherwise, in slices, so that a later wish takes
 * the place of one that is still running, and the trace can be shown while it comes.
 */
import type { DebriefDomain } from '../panels/debriefModel';
import type { WhatIfEnd, WhatIfTold } from '../panels/whatIfModel';
import { loadRefrigerant } from '../refrigerant/fluids';
import { tryOut, type WeighedMeasures, type WhatIf, type WhatIfRun } from '../scoring/whatIf';
import type { SessionLog } from '../session/corePort';
import { indexOfSignal, rowAtStep } from '../session/record/record';
import type { Scenario } from '../session/scenario/scenario';
import { EditError, type LogEdit } from '../session/whatIf/editLog';
import { openReruns, type Reruns } from '../session/whatIf/openReruns';
import { findScenario } from './findScenario';
import { fluidsNeeded } from './fluidsNeeded';
import type { FromWorker } from './protocol';
import { tracesOf } from './traces';

export interface RerunWish {
  readonly serial: number;
  readonly edits: readonly LogEdit[];
  readonly weighed: WeighedMeasures;
}

export interface RerunDesk {
  open(log: SessionLog, scenarioId: string): Promise<void>;
  wish(wish: RerunWish): Promise<void>;
  /** All signals of the finished session as they stood at a step. */
  row(step: number): void;
}

/** What is so already needs no doing, and nothing is lost by it. */
const SO_ALREADY = 'refusal.already';
const SLICE_MS = 25;
const TRACE_EVERY_MS = 120;

export function rerunDesk(post: (message: FromWorker) => void): RerunDesk {
  let scenario: Scenario | null = null;
  let reruns: Reruns | null = null;
  let wished: RerunWish | null = null;
  let askedStep: number | null = null;
  /** The newest work; whatever is older stops at its next slice. */
  let turn = 0;

  /** Runs work in slices; null where something newer has begun. */
  async function inSlices<Result>(
    work: Generator<void, Result>,
    between: () => void,
  ): Promise<Result | null> {
    turn++;
    const mine = turn;
    for (;;) {
      const until = performance.now() + SLICE_MS;
      while (performance.now() < until) {
        const { done, value } = work.next();
        if (done) return value;
      }
      between();
      await new Promise((resume) => setTimeout(resume, 0));
      if (mine !== turn) return null;
    }
  }
  async function run(wish: RerunWish): Promise<void> {
    if (!scenario || !reruns) return;
    const { serial } = wish;
    let shownMs = performance.now();
    const show = (): void => {
      if (!reruns || performance.now() - shownMs < TRACE_EVERY_MS) return;
      shownMs = performance.now();
      const traces = tracesOf(reruns.soFar());
      post({ type: 'trying', serial, traces, apartStep: reruns.apartSoFar() });
    };
    try {
      const found = await inSlices(tryOut(scenario, reruns, wish.edits, wish.weighed), show);
      if (found) post({ type: 'tried', serial, traces: tracesOf(found.after.record), told: toldOf(found) });
    } catch (error) {
      if (!(error instanceof EditError)) throw error;
      post({ type: 'notTried', serial, problem: error.problem });
    }
  }
  function tellRow(step: number, { record }: Reruns['once']): void {
    const width = record.signals.length;
    const start = rowAtStep(record, step) * width;
    const ids = record.signals.map(({ id }) => id);
    post({ type: 'row', ids, values: record.values.slice(start, start + width) });
  }
  return {
    row(step) {
      askedStep = step;
      if (reruns) tellRow(step, reruns.once);
    },
    async open(log, scenarioId) {
      const found = await findScenario(scenarioId);
      if (!found) throw new RangeError(scenarioId);
      await Promise.all(fluidsNeeded(found.data).map(loadRefrigerant));
      scenario = found;
      reruns = await inSlices(openReruns(found, log), () => undefined);
      if (reruns === null) return;
      post({ type: 'whatIfReady' });
      if (askedStep !== null) tellRow(askedStep, reruns.once);
      if (wished) await run(wished);
    },
    async wish(wish) {
      wished = wish;
      if (reruns) await run(wish);
    },
  };
}

function toldOf({ before, after, firstDifferentStep, refused }: WhatIf): WhatIfTold {
  const changed = before.score.findings.flatMap((old, at) => {
    const now = after.score.findings[at];
    return old.status === now.status && old.earned === now.earned ? [] : [{ before: old, after: now }];
  });
  return {
    before: endOf(before),
    after: endOf(after),
    changed,
    refused: refused.filter(({ reason }) => reason !== SO_ALREADY),
    firstDifferentStep,
    sameState: before.stateHash === after.stateHash,
  };
}

function endOf({ score, record, lastStep }: WhatIfRun): WhatIfEnd {
  const start = record.values.length - record.signals.length;
  const last = (id: string): number => record.values[start + indexOfSignal(record, id)];
  return {
    reported: score.reported,
    passed: score.passed,
    domains: Object.entries(score.domains).map(
      ([id, { earned, possible }]): DebriefDomain => ({ id, earned, possible }),
    ),
    lastStep,
    chargeKg: last('loop.massKg'),
    highPa: last('highSide.gaugePressurePa'),
    lowPa: last('lowSide.gaugePressurePa'),
    ventK: last('vent.temperatureK'),
    sluggedKg: last('compressor.sluggedKg'),
    ventedKg: last('vented.kg'),
  };
}
