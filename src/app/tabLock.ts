/**
 * Two tabs, one car: the tab that holds the lock works, another one only looks. Where the browser has no locks every tab
 * works; the saved session is then that of the tab that wrote last.
 */
const NAME = 'portside-session';

/** Resolves with true where this tab may work. The lock is kept until `release` resolves or the tab goes. */
export function holdSession(released: Promise<void>): Promise<boolean> {
  if (!('locks' in navigator)) return Promise.resolve(true);
  return new Promise((resolve) => {
    void navigator.locks
      .request(NAME, { ifAvailable: true }, async (lock) => {
        resolve(lock !== null);
        if (lock !== null) await released;
      })
      .catch(() => resolve(true));
  });
}
