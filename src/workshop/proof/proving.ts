/** The page's end of a proof: starts provers in threads of their own, tells how far they are, and stops them when asked. */
import { createSignal, onCleanup } from 'solid-js';
import type { ScenarioData } from '../../../shared/schema/scenario';
import type { Proof, ProofRequest } from '../../prover/proof';
import { type KeptProofs, type ProvedSoFar, proveWith } from './provePool';
import { type Thread, thread } from './thread';

export interface Proving {
  /** The last one made, with what it was made of. */
  readonly proved: () => { readonly proof: Proof; readonly data: ScenarioData } | null;
  /** Null while nothing is being proved. */
  readonly soFar: () => ProvedSoFar | null;
  readonly failure: () => string | null;
  start(data: ScenarioData, request: ProofRequest): void;
  cancel(): void;
}

const MOST_THREADS = 2;

const threadCount = (): number => Math.max(1, Math.min(MOST_THREADS, navigator.hardwareConcurrency || 1));

/** It outlives the workshop: who plays for a while and comes back finds it. */
const [proved, setProved] = createSignal<{ readonly proof: Proof; readonly data: ScenarioData } | null>(null);

export function proving(kept: KeptProofs): Proving {
  const [soFar, setSoFar] = createSignal<ProvedSoFar | null>(null);
  const [failure, setFailure] = createSignal<string | null>(null);
  let threads: readonly Thread[] = [];

  const cancel = (): void => {
    for (const one of threads) one.stop();
    threads = [];
    setSoFar(null);
  };
  const run = async (mine: readonly Thread[], data: ScenarioData, request: ProofRequest): Promise<void> => {
    const isMine = (): boolean => threads === mine;
    try {
      const asks = mine.map(({ ask }) => ask);
      const proof = await proveWith(asks, data, request, kept, (now) => isMine() && setSoFar(now));
      if (isMine()) setProved({ proof, data });
    } catch (error) {
      if (isMine()) setFailure(error instanceof Error ? error.message : String(error));
    }
    if (isMine()) cancel();
  };
  onCleanup(cancel);
  return {
    proved,
    soFar,
    failure,
    start(data, request) {
      cancel();
      setFailure(null);
      setSoFar({ done: 0, of: 0, isMost: true, now: [] });
      threads = Array.from({ length: threadCount() }, thread);
      void run(threads, data, request);
    },
    cancel,
  };
}
