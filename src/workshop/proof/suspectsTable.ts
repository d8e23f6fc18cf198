/** Has the table of suspects reckoned for a scenario, in a thread that ends with it; a newer wish stops an older one. */
import { createSignal, onCleanup } from 'solid-js';
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { ApartTable } from '../../prover/apartTable';
import { proofRequests } from './proofRequests';
import { type Thread, thread } from './thread';

export interface SuspectsMade {
  /** Null where nothing can be told of a loop that came empty. */
  readonly table: ApartTable | null;
  /** What is wrong with the scenario's own car, as suspects are called. */
  readonly own: readonly string[];
  readonly data: ScenarioData;
}

export interface SuspectsTable {
  readonly made: () => SuspectsMade | null;
  readonly isRunning: () => boolean;
  readonly failure: () => string | null;
  ask(data: ScenarioData): void;
  /** What was asked for is not wanted any more; what was made stays. */
  callOff(): void;
  /** One that a proof has made. */
  take(made: SuspectsMade): void;
}

const FIRST_SEED = 1;

export function suspectsTable(): SuspectsTable {
  const [made, setMade] = createSignal<SuspectsMade | null>(null);
  const [running, setRunning] = createSignal<Thread | null>(null);
  const [failure, setFailure] = createSignal<string | null>(null);
  const stop = (): void => {
    running()?.stop();
    setRunning(null);
  };
  const reckon = async (mine: Thread, data: ScenarioData): Promise<void> => {
    try {
      const opened = await mine.ask({ type: 'open', data, request: proofRequests.quick });
      const answer = await mine.ask({ type: 'job', job: { kind: 'apart', seed: FIRST_SEED } });
      if (running() !== mine || opened.type !== 'opened') return;
      if (answer.type !== 'result' || answer.result.kind !== 'apart') return;
      setMade({ table: answer.result.table, own: opened.own, data });
    } catch (error) {
      if (running() === mine) setFailure(error instanceof Error ? error.message : String(error));
    }
    if (running() === mine) stop();
  };
  onCleanup(stop);
  return {
    made,
    isRunning: () => running() !== null,
    failure,
    callOff: stop,
    take(given) {
      stop();
      setFailure(null);
      setMade(given);
    },
    ask(data) {
      stop();
      setFailure(null);
      const mine = thread();
      setRunning(mine);
      void reckon(mine, data);
    },
  };
}
