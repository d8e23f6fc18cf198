/**
 * What-if for the page: a worker of its own, of the same script as the session's, that holds the finished session ready.
 * Only the answer to the latest wish is taken.
 */
import { createSignal } from 'solid-js';
import type { Trace } from '../panels/debriefModel';
import type { WhatIfModel, WhatIfTold } from '../panels/whatIfModel';
import type { WeighedMeasures } from '../scoring/whatIf';
import type { SessionLog } from '../session/corePort';
import type { LogEdit } from '../session/whatIf/editLog';
import { refusalWords } from './notices';
import type { FromWorker, ToWorker } from './protocol';

export interface RunningWhatIf extends WhatIfModel {
  /** Has all signals of the finished session at a step fetched; `row` is them by id, null until they have come. */
  askRow(step: number): void;
  readonly row: () => ReadonlyMap<string, number> | null;
  dispose(): void;
}

export function startWhatIf(
  log: SessionLog,
  scenarioId: string,
  weighed: () => WeighedMeasures,
  nameOf: (id: string) => string,
): RunningWhatIf {
  const worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
  const post = (message: ToWorker): void => worker.postMessage(message);
  const [edits, setEdits] = createSignal<readonly LogEdit[]>([]);
  const [phase, setPhase] = createSignal<ReturnType<WhatIfModel['phase']>>('preparing');
  const [traces, setTraces] = createSignal<readonly Trace[] | null>(null);
  const [told, setTold] = createSignal<WhatIfTold | null>(null);
  const [apartStep, setApartStep] = createSignal<number | null>(null);
  const [problem, setProblem] = createSignal<string | null>(null);
  const [row, setRow] = createSignal<ReadonlyMap<string, number> | null>(null);
  let serial = 0;
  let isReady = false;

  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    if (data.type === 'whatIfReady') {
      isReady = true;
      setPhase(edits().length > 0 ? 'running' : 'idle');
    } else if (data.type === 'failed') setPhase('failed');
    else if (data.type === 'row') setRow(new Map(data.ids.map((id, at) => [id, data.values[at]])));
    else if (!('serial' in data) || data.serial !== serial) return;
    else if (data.type === 'trying') {
      setTraces(data.traces);
      setApartStep(data.apartStep);
    } else if (data.type === 'notTried') {
      setProblem(data.problem ? refusalWords(data.problem.reason, data.problem.params, nameOf) : null);
      setPhase('idle');
    } else if (data.type === 'tried') {
      setTraces(data.traces);
      setTold(data.told);
      setApartStep(data.told.firstDifferentStep);
      setPhase('told');
    }
  };
  worker.onerror = () => setPhase('failed');
  post({ type: 'whatIf', log, scenarioId });
  return {
    edits,
    phase,
    traces,
    told,
    apartStep,
    problem,
    setEdits(wanted) {
      serial++;
      setEdits(wanted);
      setProblem(null);
      setTold(null);
      setApartStep(null);
      setTraces(null);
      if (phase() !== 'failed') setPhase(isReady ? (wanted.length > 0 ? 'running' : 'idle') : 'preparing');
      if (wanted.length > 0) post({ type: 'try', wish: { serial, edits: [...wanted], weighed: weighed() } });
    },
    refusalWords: ({ reason, params }) => refusalWords(reason, params, nameOf),
    askRow: (step) => post({ type: 'row', step }),
    row,
    dispose: () => worker.terminate(),
  };
}
