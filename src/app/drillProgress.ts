/** How far the drill has come, kept in this browser as best results are: what was missed, and the level. */
import type { DrillLevel } from '../layout/drill/drill';
import { NOTHING_YET, type Repetition } from '../layout/drill/repetition';
import { keepText } from './storage';

const KEY = 'portside-drill';

export interface DrillProgress {
  readonly level: DrillLevel;
  readonly repetition: Repetition;
}

export function drillProgress(): DrillProgress {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<DrillProgress>;
    return {
      level: ([1, 2, 3, 4].find((one) => one === kept.level) as DrillLevel | undefined) ?? 1,
      repetition: isRepetition(kept.repetition) ? kept.repetition : NOTHING_YET,
    };
  } catch {
    return { level: 1, repetition: NOTHING_YET };
  }
}

export function keepDrillProgress(progress: DrillProgress): void {
  keepText(KEY, JSON.stringify(progress));
}

function isRepetition(value: unknown): value is Repetition {
  if (typeof value !== 'object' || value === null) return false;
  const { answered, right, inRow, due } = value as Partial<Repetition>;
  return (
    [answered, right, inRow].every((count) => Number.isInteger(count)) &&
    Array.isArray(due) &&
    due.every(
      ({ kind, dueAt, rung }) =>
        typeof kind === 'string' && Number.isInteger(dueAt) && Number.isInteger(rung),
    )
  );
}
