/** The next bay: of the kind that is due, found by walking on from a fresh seed, or simply a fresh one. */
import type { DrillBay, DrillLevel } from './drill';
import { drillBay } from './drillBay';
import { dueNow, kindOf, type Repetition } from './repetition';

/** The rarest kind is met once in some fifty bays; after this many the walk gives up and the bay is a fresh one. */
const MOST_LOOKED_AT = 200;

export interface NextBay {
  readonly bay: DrillBay;
  /** It is of a kind that was missed. */
  readonly comesBack: boolean;
}

export function nextBay(progress: Repetition, level: DrillLevel, freshSeed: number): NextBay {
  const due = dueNow(progress);
  if (due) {
    for (let i = 0; i < MOST_LOOKED_AT; i++) {
      const bay = drillBay(freshSeed + i, level);
      if (kindOf(bay) === due.kind) return { bay, comesBack: true };
    }
  }
  return { bay: drillBay(freshSeed, level), comesBack: false };
}
