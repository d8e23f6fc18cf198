/**
 * A closer look at the likeliest causes: companions of the very session, and of each cause the severity that fits best what
 * was seen. What a cause shows goes up and down with its severity by no straight line (a drier is nearly open, and a little
 * further on shut), so severities are searched: a wide step to either side of where the forecast puts it, then where it looks best
 * between those that were lived, three times. Where none of the likeliest shows what was seen, the next
 * are tried.
 *
 *   log belief(cause) = ln prior + ln mean over its severities of the likelihood of all that was seen
 *
 * The spread of a reading is smaller than a forecast's, since only the car and its severity may still differ: 2 % of the
 * absolute pressure, 0.8 K. Estimates, no source.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { exp } from '../../numerics/exp';
import { ln } from '../../numerics/ln';
import type { PlantOptions } from '../../plant/buildPlant';
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { LoggedCommand } from '../../session/corePort';
import { plantOptions } from '../../session/scenario/plantOptions';
import { causesIn, type GhostSpec, priorsOf } from '../../suspects/causes';
import { logMean, logSum } from '../../suspects/likelihood';
import type { Forecast } from '../forecast/forecastOf';
import { furthest } from '../forecast/logOdds';
import type { Probe } from '../forecast/probe';
import { spreadsApart } from '../forecast/spreadsApart';
import { type Companion, companionOf } from './companion';
import type { Seen } from './doubtOf';

/** Whom a closer look is worth. */
export interface Candidates {
  /** One car of each cause, where the forecasts put it: the sound one, those still believed in, then those that what every
   * ghost was asked speaks for. */
  readonly specs: readonly GhostSpec[];
  /** How many of them, from the first, are believed in. */
  readonly believed: number;
}

/** A car that fits, and what is believed of its cause. */
export interface Fitted {
  readonly spec: GhostSpec;
  readonly share: number;
}

export interface CloserLook {
  /** After all that was seen up to `step`. */
  look(log: readonly LoggedCommand[], step: number, seen: readonly Seen[]): readonly Fitted[];
  /**
   * The same when no test is left: a car that shows what a sound car shows, at all that was seen, is called sound, and one
   * with two faults that shows what one of them does has that one. Nobody could say more of it.
   */
  atLast(seen: readonly Seen[]): readonly Fitted[];
  /** The car of a cause that fits best, if that cause was looked at. */
  bestOf(cause: string): GhostSpec | null;
  /** Steps its companions have lived. */
  steps(): number;
}

/** Severities tried to either side of where the forecast puts a cause. */
const TO_EITHER_SIDE = 0.3;
/** How often after that the severity is tried that looks best between those lived; and where between two it may be. */
const ROUNDS = 3;
const PARTS = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875];
/** A cause whose best place looks so many nats worse than the best is not tried there [guess]. */
const NOT_NEAR = 60;
/** So many causes at once and no fewer; more only where none of them shows what was seen. */
const AT_ONCE = 7;
/** Nats a reading: worse on the mean, and it is something else [guess]. */
const POOR = -3;
const MILDEST = 0.05;
/** Nearer to one that was tried it would tell nothing new. */
const NEAR = 0.025;
/** Of a forecast's spread. */
const FINER = 0.5;
const RIGHT = ln(0.95);
const WRONG = ln(0.05);
/** A car so many nats under the best is lived no further [guess]. */
const HOPELESS = 12;
/** Nats a reading: better on the mean, and finer severities could tell no more [guess]. */
const FINE = -0.5;
/** Spreads over everything that was read, as a square sum: less than this from a sound car is sound [guess]. */
const ALIKE = 1;

interface Tried {
  readonly companion: Companion;
  log: number;
}

export function closerLookAt(
  data: ScenarioData,
  seed: number,
  { specs, believed }: Candidates,
  forecast: Forecast,
): CloserLook {
  // what is hidden is no part of it: ghosts have their own fault, their own charge and instruments without error
  const options: PlantOptions = { ...plantOptions(data, seed), foundSealerKg: 0 };
  const atmospherePa = options.weather.pressurePa;
  const signals = [...new Set(forecast.probes.flatMap(signalsOf))];
  const tried = new Map<string, Tried[]>();
  const causes = specs.map(({ cause }) => cause);
  const priors = priorsOf(causes).map(ln);
  const beliefOf = (cause: string): number =>
    priors[causes.indexOf(cause)] + logMean((tried.get(cause) ?? []).map(({ log }) => log));
  /** What is so far off is lived no further; the sound car is, for comparison. */
  const kept = (): Tried[] => {
    const all = [...tried.values()].flat();
    const most = Math.max(...all.map(({ log }) => log));
    return all.filter(
      ({ log, companion }) => log > most - HOPELESS || companion.spec.cause === NOTHING_WRONG,
    );
  };
  const bestOf = (cause: string): Tried =>
    (tried.get(cause) ?? []).reduce((best, one) => (one.log > best.log ? one : best));
  const fitted = (): readonly Fitted[] => {
    const sum = logSum([...tried.keys()].map(beliefOf));
    return [...tried.keys()].map((cause) => ({
      spec: bestOf(cause).companion.spec,
      share: exp(beliefOf(cause) - sum),
    }));
  };
  const isNew = (cause: string, severity: number): boolean =>
    severity >= MILDEST &&
    severity <= 1 &&
    !(tried.get(cause) ?? []).some(({ companion }) => Math.abs(companion.spec.severity - severity) < NEAR);
  /** Whether anything shows what was seen. */
  const isShown = (seen: readonly Seen[]): boolean =>
    [...tried.values()].flat().some(({ log }) => log > POOR * seen.length);

  return {
    look(log, step, seen) {
      const weighed = (companion: Companion): number => {
        companion.liveTo(log, step);
        return seen.reduce((sum, one) => sum + logOf(one, shownBy(companion, one), atmospherePa), 0);
      };
      const add = (spec: GhostSpec): void => {
        const companion = companionOf(options, spec, signals);
        tried.set(spec.cause, [...(tried.get(spec.cause) ?? []), { companion, log: weighed(companion) }]);
      };
      /** Of all severities between two that were lived, the one that looks best; a sound car is the mildest. */
      const promising = (cause: string): { readonly severity: number; readonly log: number } => {
        const cars = [...(tried.get(NOTHING_WRONG) ?? []), ...(tried.get(cause) ?? [])].sort(
          (one, other) => one.companion.spec.severity - other.companion.spec.severity,
        );
        const places = cars.slice(1).flatMap(({ companion: to }, at) => {
          const from = cars[at].companion;
          return PARTS.map((part) => ({
            severity: from.spec.severity + part * (to.spec.severity - from.spec.severity),
            log: seen.reduce(
              (sum, one) =>
                sum +
                logOf(one, between(one.probe, shownBy(from, one), shownBy(to, one), part), atmospherePa),
              0,
            ),
          }));
        });
        return places
          .filter(({ severity }) => isNew(cause, severity))
          .reduce((best, one) => (one.log > best.log ? one : best), {
            severity: 0,
            log: Number.NEGATIVE_INFINITY,
          });
      };
      const refine = (among: readonly string[]): void => {
        const faulty = among.filter((cause) => cause !== NOTHING_WRONG);
        const isFine = (cause: string): boolean => bestOf(cause).log > FINE * seen.length;
        for (const cause of faulty.filter((one) => !isFine(one))) {
          const { spec } = bestOf(cause).companion;
          for (const severity of [spec.severity - TO_EITHER_SIDE, spec.severity + TO_EITHER_SIDE])
            if (isNew(cause, severity)) add(atSeverity(spec, severity));
        }
        for (let round = 0; round < ROUNDS; round++) {
          for (const cause of faulty.filter((one) => !isFine(one))) {
            const { severity, log } = promising(cause);
            const best = Math.max(...[...tried.values()].flat().map((one) => one.log));
            if (log > best - NOT_NEAR) add(atSeverity(bestOf(cause).companion.spec, severity));
          }
        }
      };
      const still = new Set(kept());
      for (const one of [...tried.values()].flat())
        one.log = still.has(one) ? weighed(one.companion) : Number.NEGATIVE_INFINITY;
      while (tried.size < specs.length && !isShown(seen)) {
        const more = specs.slice(tried.size, Math.max(believed, tried.size + AT_ONCE));
        for (const spec of more) add(spec);
        refine(more.map(({ cause }) => cause));
      }
      return fitted();
    },
    atLast: (seen) =>
      fitted().map((one) => {
        const simpler = [NOTHING_WRONG, ...causesIn(one.spec.cause)]
          .filter((cause) => cause !== one.spec.cause && tried.has(cause))
          .map((cause) => bestOf(cause).companion)
          .find((other) => isLike(bestOf(one.spec.cause).companion, other, seen));
        return simpler ? { ...one, spec: simpler.spec } : one;
      }),
    bestOf: (cause) => (tried.has(cause) ? bestOf(cause).companion.spec : null),
    steps: () => [...tried.values()].flat().reduce((sum, { companion }) => sum + companion.steps(), 0),
  };

  /** What was taken out of the loop, and dirt, is as a forecast has it. */
  function shownBy({ spec, shows }: Companion, read: Seen): number {
    return read.steps.length > 0 ? shows(read) : forecast.shows(spec, read.probe);
  }

  function isLike(one: Companion, other: Companion, seen: readonly Seen[]): boolean {
    const squares = seen.map((read) => {
      const off = spreadsApart(read.probe, shownBy(one, read), shownBy(other, read), atmospherePa, 0);
      return off * off;
    });
    return squares.reduce((sum, square) => sum + square, 0) < ALIKE;
  }
}

/** A pressure is read off the set or off the charging hose, whichever is there. */
const signalsOf = ({ seen }: Probe): string[] => [seen, seen.replace('lowGauge', 'chargingGauge')];

const atSeverity = ({ cause, both }: GhostSpec, severity: number): GhostSpec => ({
  cause,
  severity,
  ...(both === undefined ? {} : { both: both.map((one) => ({ ...one, severity })) }),
});

/** What a car between two would show: in part, or what the nearer shows. */
function between({ unit }: Probe, from: number, to: number, part: number): number {
  if (unit === 'look' || Number.isNaN(from) || Number.isNaN(to)) return part < 0.5 ? from : to;
  return from + part * (to - from);
}

function logOf({ probe, value }: Seen, shown: number, atmospherePa: number): number {
  if (probe.unit === 'look') return value === shown ? RIGHT : WRONG;
  const off = Math.min(furthest(probe) / FINER, spreadsApart(probe, value, shown, atmospherePa, 0) / FINER);
  return -0.5 * off * off;
}
