/** Something that is said again and again is said at most this often; what came last is always said in the end. */
export interface Unhurried {
  /** Soon, and not more often than that. */
  soon(): void;
  /** Now. */
  now(): void;
  stop(): void;
}

/** Between two tellings, ms: no eye or ear follows faster. */
const APART_MS = 110;

export function unhurried(tell: () => void): Unhurried {
  let last = Number.NEGATIVE_INFINITY;
  let timer = 0;
  const now = (): void => {
    clearTimeout(timer);
    timer = 0;
    last = performance.now();
    tell();
  };
  return {
    soon() {
      const wait = last + APART_MS - performance.now();
      if (wait <= 0) now();
      else if (timer === 0) timer = window.setTimeout(now, wait);
    },
    now,
    stop: () => clearTimeout(timer),
  };
}
