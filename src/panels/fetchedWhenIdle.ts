/** Parts that are fetched one after the other while nothing else is to do; where the network has gone, later on. */
import { reachable } from './reachable';

/** Until it is looked for a network that had gone. */
const AGAIN_MS = 20_000;
/** Nothing else to do or not: so long it waits. */
const MOST_MS = 4000;

export function fetchedWhenIdle(parts: readonly (() => unknown)[]) {
  let timer = 0;
  let isOver = false;
  const fetchAll = async (): Promise<void> => {
    try {
      for (const fetchPart of parts) {
        if (isOver) return;
        await reachable();
        await fetchPart();
      }
    } catch {
      if (!isOver) timer = window.setTimeout(start, AGAIN_MS);
    }
  };
  const start = (): void => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => void fetchAll(), { timeout: MOST_MS });
    else void fetchAll();
  };
  const stop = (): void => {
    isOver = true;
    clearTimeout(timer);
  };
  return { start, stop };
}
