/**
 * Of things that hang on conditions, those that have to be looked at: all, but while nothing happens only what may change,
 * and of that what counts steps, until a signal passes a limit that something hangs on.
 */
import type { Moment } from './moment';
import type { Settled } from './settled';
import { type Stir, stir } from './stir';

interface Awake<One> {
  /** In their order. `quiet`: nothing happened, now or in the moment before. */
  now(moment: Moment, quiet: boolean): readonly One[];
  /** To be called once they have been looked at. */
  looked(moment: Moment, quiet: boolean): void;
  /** The moment looked at last is no longer the one before. */
  forget(): void;
}

interface Quiet<One> {
  readonly open: readonly One[];
  readonly counting: readonly One[];
  readonly stir: Stir;
}

/** `settled`: of one, from this moment, in which nothing happens, until something does; null where it counts steps. */
export function awake<One>(
  all: readonly One[],
  settled: (one: One, moment: Moment) => ReturnType<Settled> | null,
): Awake<One> {
  let held: Quiet<One> | null = null;
  let stirred = false;
  const quietIn = (moment: Moment): Quiet<One> => {
    const each = all.map((one) => ({ one, on: settled(one, moment) }));
    return {
      open: each.filter(({ on }) => typeof on !== 'boolean').map(({ one }) => one),
      counting: each.filter(({ on }) => on === null).map(({ one }) => one),
      stir: stir(each.flatMap(({ on }) => (typeof on === 'boolean' ? [] : (on ?? [])))),
    };
  };
  return {
    now(moment, quiet) {
      if (!quiet || held === null) return all;
      stirred = held.stir.stirred(moment);
      return stirred ? held.open : held.counting;
    },
    looked(moment, quiet) {
      if (!quiet) held = null;
      else if (held === null || stirred) {
        held ??= quietIn(moment);
        held.stir.rest(moment);
      }
    },
    forget() {
      held = null;
    },
  };
}
