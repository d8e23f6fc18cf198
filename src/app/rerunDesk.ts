/**
 * The worker's side of what-if: has a finished session ready and runs it otherwise, in slices, so that a later wish takes the
 * place of one that is running, and the trace is shown while it comes. What is likely to be wished next is run while nothing
 * is wished. One thing runs at a time; answers are kept.
 */
import { loadRefrigerant } from '../refrigerant/fluids';
import { tryOut, type WeighedMeasures, type WhatIf } from '../scoring/whatIf';
import type { SessionLog } from '../session/corePort';
import { rowAtStep } from '../session/record/record';
import type { Scenario } from '../session/scenario/scenario';
import { EditError, type LogEdit } from '../session/whatIf/editLog';
import type { LivedOnce } from '../session/whatIf/livedOnce';
import { liveSession, type Reruns, rerunsOf } from '../session/whatIf/openReruns';
import { breather } from './breather';
import { findScenario } from './findScenario';
import { fluidsNeeded } from './fluidsNeeded';
import type { FromWorker } from './protocol';
import { keyOfTry, type RerunAnswer, rerunAnswers } from './rerunAnswers';
import { tracesOf } from './traces';
import { whatIfTold } from './whatIfTold';

export interface Try {
  readonly edits: readonly LogEdit[];
  readonly weighed: WeighedMeasures;
}

export interface RerunWish extends Try {
  readonly serial: number;
}

export interface RerunDesk {
  /** Out of `lent` comes the session as it was lived elsewhere, or null where it has to be lived here. */
  open(log: SessionLog, scenarioId: string, lent: MessagePort): Promise<void>;
  wish(wish: RerunWish): Promise<void>;
  /** To be run while nothing is wished, before what is to be run already. */
  ahead(tries: readonly Try[]): Promise<void>;
  /** Nothing runs until something is asked for; the same wish then goes on where it was. */
  hold(): void;
  /** All signals of the finished session as they stood at a step. */
  row(step: number): void;
}

interface Running {
  readonly key: string;
  readonly work: Generator<void, WhatIf>;
}

const SLICE_MS = 25;
const TRACE_EVERY_MS = 150;

const taken = (lent: MessagePort): Promise<LivedOnce | null> =>
  new Promise((resolve) => {
    lent.onmessage = ({ data }: MessageEvent<LivedOnce | null>) => resolve(data);
  });

export function rerunDesk(post: (message: FromWorker) => void): RerunDesk {
  const answers = rerunAnswers();
  const breathe = breather();
  let ready: { readonly scenario: Scenario; readonly reruns: Reruns } | null = null;
  let wished: RerunWish | null = null;
  let expected: readonly Try[] = [];
  let running: Running | null = null;
  let shownMs = Number.NEGATIVE_INFINITY;
  let askedStep: number | null = null;
  let isAtWork = false;

  function answer({ serial }: RerunWish, found: RerunAnswer): void {
    wished = null;
    post('told' in found ? { type: 'tried', serial, ...found } : { type: 'notTried', serial, ...found });
  }
  /** Runs for a slice of wall time; gives the answer once there is one. */
  function slice({ work }: Running): RerunAnswer | null {
    const until = performance.now() + SLICE_MS;
    try {
      while (performance.now() < until) {
        const { done, value } = work.next();
        if (done) return { traces: tracesOf(value.after.record), told: whatIfTold(value) };
      }
    } catch (error) {
      if (error instanceof EditError) return { problem: error.problem };
      throw error;
    }
    return null;
  }
  function show({ serial }: RerunWish, { soFar, apartSoFar }: Reruns): void {
    if (performance.now() - shownMs < TRACE_EVERY_MS) return;
    shownMs = performance.now();
    post({ type: 'trying', serial, traces: tracesOf(soFar()), apartStep: apartSoFar() });
  }
  /** Does a slice of what is to be done next; false where nothing is. */
  function workOn({ scenario, reruns }: NonNullable<typeof ready>): boolean {
    const next = wished ?? expected[0];
    if (next === undefined) return false;
    const key = keyOfTry(next);
    const kept = answers.of(key);
    if (kept) {
      if (wished) answer(wished, kept);
      else expected = expected.slice(1);
      return true;
    }
    if (running?.key !== key) running = { key, work: tryOut(scenario, reruns, next.edits, next.weighed) };
    const found = slice(running);
    if (found) {
      running = null;
      answers.keep(key, found);
    } else if (wished) show(wished, reruns);
    return true;
  }
  async function work(): Promise<void> {
    if (isAtWork || !ready) return;
    isAtWork = true;
    try {
      while (workOn(ready)) await breathe();
    } finally {
      isAtWork = false;
    }
  }
  async function inStretches<Result>(work: Generator<void, Result>): Promise<Result> {
    for (;;) {
      const { done, value } = work.next();
      if (done) return value;
      await breathe();
    }
  }
  function tellRow(step: number, { record }: LivedOnce): void {
    const width = record.signals.length;
    const start = rowAtStep(record, step) * width;
    const ids = record.signals.map(({ id }) => id);
    post({ type: 'row', ids, values: record.values.slice(start, start + width) });
  }
  return {
    row(step) {
      askedStep = step;
      if (ready) tellRow(step, ready.reruns.once);
    },
    async open(log, scenarioId, lent) {
      const scenario = await findScenario(scenarioId);
      if (!scenario) throw new RangeError(scenarioId);
      await Promise.all(fluidsNeeded(scenario.data).map(loadRefrigerant));
      const once = (await taken(lent)) ?? (await inStretches(liveSession(scenario, log)));
      ready = { scenario, reruns: rerunsOf(scenario, log, once) };
      post({ type: 'whatIfReady' });
      if (askedStep !== null) tellRow(askedStep, once);
      await work();
    },
    wish(wish) {
      wished = wish;
      shownMs = Number.NEGATIVE_INFINITY;
      return work();
    },
    ahead(tries) {
      expected = [...tries, ...expected];
      return work();
    },
    hold() {
      wished = null;
      expected = [];
    },
  };
}
