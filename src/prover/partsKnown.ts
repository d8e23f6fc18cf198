/**
 * Of how many parts a proof is, as far as that is known: once the first bay is done exactly, before that the most there can
 * be, since no bay has more parts than the first. So the share that is done never falls.
 */
import type { ProofRequest } from './proof';

export interface PartsKnown {
  readonly of: number;
  /** There may be fewer. */
  readonly isMost: boolean;
}

/** `done` before this round, `next` in it. */
export const partsKnown = ({ seeds }: ProofRequest, done: number, next: number): PartsKnown =>
  done === 0 ? { of: next * seeds, isMost: seeds > 1 } : { of: done + next, isMost: false };
