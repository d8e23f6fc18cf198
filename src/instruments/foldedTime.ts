/**
 * A time axis that folds long waits: a stretch in which nobody did anything and nothing moved is squeezed to a small part
 * of the width, so that what was done keeps its room. Pure; seconds in, share of the width out.
 */
export interface Fold {
  readonly fromS: number;
  readonly toS: number;
}

export interface TimeAxis {
  readonly endS: number;
  readonly folds: readonly Fold[];
  /** 0..1. */
  share(seconds: number): number;
  /** Marks that do not fall into a fold, in seconds. */
  readonly marks: readonly number[];
}

/** A wait is folded when it is longer than this share of the whole, and at least four minutes. */
const FOLD_SHARE = 0.22;
const FOLD_AT_LEAST_S = 240;
/** Left open at either end of a fold. */
const MARGIN_S = 45;
const FOLDED_SHARE = 0.045;
const MINUTE_S = 60;
/** Short sessions are marked in parts of a minute. */
const MARK_STEPS_MIN = [1 / 6, 1 / 2, 1, 2, 4, 5, 10, 15, 20, 30, 60];
const MARKS_AT_MOST = 10;

/** Whether nothing moves between two moments. */
export type IsFlat = (fromS: number, toS: number) => boolean;

function foldsOf(endS: number, actionsS: readonly number[], isFlat: IsFlat): Fold[] {
  const times = [0, ...[...actionsS].sort((a, b) => a - b), endS];
  const longest = Math.max(FOLD_AT_LEAST_S, endS * FOLD_SHARE);
  const folds: Fold[] = [];
  for (let i = 1; i < times.length; i++) {
    const fold = { fromS: times[i - 1] + MARGIN_S, toS: times[i] - MARGIN_S };
    if (times[i] - times[i - 1] > longest && isFlat(fold.fromS, fold.toS)) folds.push(fold);
  }
  return folds;
}

export function foldedTime(endS: number, actionsS: readonly number[], isFlat: IsFlat): TimeAxis {
  const folds = foldsOf(endS, actionsS, isFlat);
  const folded = folds.reduce((sum, fold) => sum + fold.toS - fold.fromS, 0);
  const open = Math.max(1e-9, endS - folded);
  const openShare = 1 - folds.length * FOLDED_SHARE;
  const share = (seconds: number): number => {
    let at = 0;
    let last = 0;
    for (const fold of folds) {
      if (seconds <= fold.fromS) return at + ((seconds - last) / open) * openShare;
      at += ((fold.fromS - last) / open) * openShare;
      if (seconds <= fold.toS) return at + ((seconds - fold.fromS) / (fold.toS - fold.fromS)) * FOLDED_SHARE;
      at += FOLDED_SHARE;
      last = fold.toS;
    }
    return at + ((seconds - last) / open) * openShare;
  };
  return { endS, folds, share, marks: marksOf(open, endS, folds) };
}

function marksOf(openS: number, endS: number, folds: readonly Fold[]): number[] {
  const stepMin = MARK_STEPS_MIN.find((step) => openS / MINUTE_S / step <= MARKS_AT_MOST) ?? 120;
  const marks: number[] = [];
  for (let seconds = 0; seconds <= endS; seconds += stepMin * MINUTE_S) {
    if (!folds.some((fold) => seconds > fold.fromS && seconds < fold.toS)) marks.push(seconds);
  }
  return marks;
}
