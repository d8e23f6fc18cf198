/** Something that is said again and again is said at most this often; what came last is always said in the end. */
export interface Unhurried {
  /** Soon, and not more often than that; not in the same picture as what it is said about. */
  soon(): void;
  /** Now. */
  now(): void;
  stop(): void;
}

/** Between two tellings, ms: no eye or ear follows faster. */
const APART_MS = 110;
/** About a picture of the screen. */
const NEXT_MS = 16;

export function unhurried(tell: () => void): Unhurried {
  let lastMs = Number.NEGATIVE_INFINITY;
  let timer = 0;
  const now = (): void => {
    clearTimeout(timer);
    timer = 0;
    lastMs = performance.now();
    tell();
  };
  return {
    soon() {
      if (timer !== 0) return;
      timer = window.setTimeout(now, Math.max(NEXT_MS, lastMs + APART_MS - performance.now()));
    },
    now,
    stop: () => clearTimeout(timer),
  };
}
