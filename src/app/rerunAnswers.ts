/** Answers to what was tried otherwise, kept by what was tried; the oldest goes where there are too many. */
import type { Trace } from '../panels/debriefModel';
import type { WhatIfTold } from '../panels/whatIfModel';
import { canonicalJson } from '../session/canonicalJson';
import type { ShapeProblem } from '../session/commandShape';
import type { Try } from './rerunDesk';

export type RerunAnswer =
  | { readonly traces: readonly Trace[]; readonly told: WhatIfTold }
  | { readonly problem: ShapeProblem | null };

export interface RerunAnswers {
  of(key: string): RerunAnswer | undefined;
  keep(key: string, answer: RerunAnswer): void;
}

/** About 100 kB each. */
const MOST = 64;

/** Two that try the same have the same. */
export const keyOfTry = ({ edits, weighed }: Try): string => canonicalJson({ edits, weighed });

export function rerunAnswers(): RerunAnswers {
  const kept = new Map<string, RerunAnswer>();
  return {
    of: (key) => kept.get(key),
    keep(key, answer) {
      kept.delete(key);
      kept.set(key, answer);
      for (const oldest of kept.keys()) {
        if (kept.size <= MOST) break;
        kept.delete(oldest);
      }
    },
  };
}
