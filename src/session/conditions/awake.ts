/** Of things that hang on conditions, those that have to be looked at: all, but while nothing happens only what may change. */
import type { Moment } from './moment';

interface Awake<One> {
  /** In their order. `quiet`: nothing happened, now or in the moment before. */
  now(quiet: boolean): readonly One[];
  /** To be called once they have been looked at. */
  looked(moment: Moment, quiet: boolean): void;
  /** The moment looked at last is no longer the one before. */
  forget(): void;
}

/** `sleeps`: whether one stays as it is from this moment, in which nothing happens, until something does. */
export function awake<One>(all: readonly One[], sleeps: (one: One, moment: Moment) => boolean): Awake<One> {
  let open: readonly One[] | null = null;
  return {
    now: (quiet) => (quiet && open !== null ? open : all),
    looked(moment, quiet) {
      if (!quiet) open = null;
      else open ??= all.filter((one) => !sleeps(one, moment));
    },
    forget() {
      open = null;
    },
  };
}
