/**
 * What-if for the page: a worker of its own, of the same script as the session's, that holds the finished session ready.
 * Only the answer to the latest wish is taken. What is likely to be wished next is asked for ahead.
 */
import { createSignal } from 'solid-js';
import type { Trace } from '../panels/debriefModel';
import { leftOut } from '../panels/whatIfEdits';
import type { WhatIfModel, WhatIfTold } from '../panels/whatIfModel';
import type { WeighedMeasures } from '../scoring/whatIf';
import type { SessionLog } from '../session/corePort';
import type { LogEdit } from '../session/whatIf/editLog';
import { refusalWords } from './notices';
import type { FromWorker, ToWorker } from './protocol';
import type { RerunAsk } from './rerunDoor';

export interface RunningWhatIf extends WhatIfModel {
  /** Has all signals of the finished session at a step fetched; `row` is them by id, null until they have come. */
  askRow(step: number): void;
  readonly row: () => ReadonlyMap<string, number> | null;
  /** Has each of these actions left out while nothing else is asked, the last first: it takes least. */
  workAhead(numbers: readonly number[]): void;
  dispose(): void;
}

export interface WhatIfOptions {
  readonly log: SessionLog;
  readonly scenarioId: string;
  /** Where the session comes from as it was lived for the debrief. */
  readonly lent: MessagePort;
  readonly weighed: () => WeighedMeasures;
  readonly nameOf: (id: string) => string;
}

export function startWhatIf({ log, scenarioId, lent, weighed, nameOf }: WhatIfOptions): RunningWhatIf {
  const worker = new Worker(new URL('./core.worker.ts', import.meta.url), { type: 'module' });
  const post = (asked: RerunAsk, transfer: Transferable[] = []): void =>
    worker.postMessage({ type: 'rerun', ask: asked } satisfies ToWorker, transfer);
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
      if (phase() === 'preparing') setPhase(edits().length > 0 ? 'running' : 'idle');
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
  post({ do: 'open', log, scenarioId, lent }, [lent]);

  /** Asks for what is wished now; whatever is older is not heard any more. */
  const ask = (): void => {
    serial++;
    const isWished = edits().length > 0;
    if (phase() !== 'failed') setPhase(isReady ? (isWished ? 'running' : 'idle') : 'preparing');
    if (isWished) post({ do: 'wish', wish: { serial, edits: [...edits()], weighed: weighed() } });
  };
  const ahead = (tries: readonly (readonly LogEdit[])[]): void =>
    post({ do: 'ahead', tries: tries.map((one) => ({ edits: [...one], weighed: weighed() })) });
  return {
    edits,
    phase,
    traces,
    told,
    apartStep,
    problem,
    setEdits(wanted) {
      setEdits(wanted);
      setProblem(null);
      setTold(null);
      setApartStep(null);
      setTraces(null);
      ask();
    },
    stop() {
      serial++;
      setPhase('stopped');
      post({ do: 'hold' });
    },
    goOn: ask,
    expect: (number) => ahead([leftOut(edits(), number)]),
    workAhead: (numbers) => ahead(numbers.map((number) => leftOut([], number)).reverse()),
    refusalWords: ({ reason, params }) => refusalWords(reason, params, nameOf),
    askRow: (step) => post({ do: 'row', step }),
    row,
    dispose: () => worker.terminate(),
  };
}
