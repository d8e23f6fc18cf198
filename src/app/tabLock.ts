/**
 * Two tabs, one session: the tab that holds its lock works, another one only looks and is told when the lock is free again.
 * A lock is one scenario, mode and seed. Where the browser has no locks every tab works; the saved session is then that
 * of the tab that wrote last.
 */
import type { Asked } from './address';

const nameOf = ({ scenarioId, mode, seed }: Asked): string =>
  `portside-session/${scenarioId}/${mode}/${seed}`;

/**
 * Resolves with true where this tab may work; the lock is kept until `until` aborts or the tab goes. Where another tab has
 * it, `onFree` is called once that one has let go, unless `until` aborted first.
 */
export function holdSession(asked: Asked, until: AbortSignal, onFree: () => void): Promise<boolean> {
  if (!('locks' in navigator)) return Promise.resolve(true);
  const name = nameOf(asked);
  const released = new Promise<void>((resolve) => until.addEventListener('abort', () => resolve()));
  const wait = (): void => {
    navigator.locks
      .request(name, { signal: until }, () => undefined)
      .then(
        () => until.aborted || onFree(),
        () => undefined,
      );
  };
  return new Promise((resolve) => {
    void navigator.locks
      .request(name, { ifAvailable: true }, async (lock) => {
        resolve(lock !== null);
        if (lock === null) wait();
        else await released;
      })
      .catch(() => resolve(true));
  });
}
