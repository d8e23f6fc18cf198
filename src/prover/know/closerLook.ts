/**
 * A closer look at the likeliest causes: companions of the very session, and of each cause the severity that fits best what
 * was seen. What a cause shows goes up and down with its severity by no straight line (a drier is nearly open, and a little
 * further on shut), so severities are searched: a wide step to either side of where the forecast puts it, then half of it
 * about the best of those that are still likely, then half again. Where none of the likeliest shows what was seen, the next
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
  /** Steps its companions have lived. */
  steps(): number;
}

/** By how much severities are tried to either side, and of which causes: so many nats under the likeliest at most [guess]. */
const ROUNDS = [
  { step: 0.3, nats: 60 },
  { step: 0.15, nats: 20 },
  { step: 0.07, nats: 8 },
] as const;
type Round = (typeof ROUNDS)[number];
/** So many causes at once and no fewer; more only where none of them shows what was seen. */
const AT_ONCE = 7;
/** Nats a reading: worse on the mean, and it is something else [guess]. */
const POOR = -3;
const MILDEST = 0.05;
/** Nearer to one that was tried it would tell nothing new. */
const NEAR = 0.04;
/** Of a forecast's spread. */
const FINER = 0.5;
const RIGHT = ln(0.95);
const WRONG = ln(0.05);
/** A car so many nats under the best is lived no further [guess]. */
const HOPELESS = 40;
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
  const likeliest = (): string[] => [...tried.keys()].sort((a, b) => beliefOf(b) - beliefOf(a));
  const bestOf = (cause: string): Tried =>
    (tried.get(cause) ?? []).reduce((best, one) => (one.log > best.log ? one : best));
  const besides = (cause: string, step: number): readonly GhostSpec[] => {
    if (cause === NOTHING_WRONG) return [];
    const there = (tried.get(cause) ?? []).map(({ companion }) => companion.spec.severity);
    const { spec } = bestOf(cause).companion;
    return [spec.severity - step, spec.severity + step]
      .map((severity) => Math.max(MILDEST, Math.min(1, severity)))
      .filter((severity) => !there.some((one) => Math.abs(one - severity) < NEAR))
      .map((severity) => atSeverity(spec, severity));
  };
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
      const refine = (rounds: readonly Round[], among: readonly string[]): void => {
        for (const round of rounds) {
          const [best] = likeliest();
          const near = likeliest().filter(
            (one) => among.includes(one) && beliefOf(best) - beliefOf(one) < round.nats,
          );
          for (const cause of near) for (const spec of besides(cause, round.step)) add(spec);
        }
      };
      const still = new Set(kept());
      for (const one of [...tried.values()].flat())
        one.log = still.has(one) ? weighed(one.companion) : Number.NEGATIVE_INFINITY;
      if (tried.size > 0) refine(ROUNDS.slice(1), [...tried.keys()]);
      while (tried.size < specs.length && !isShown(seen)) {
        const more = specs.slice(tried.size, Math.max(believed, tried.size + AT_ONCE));
        for (const spec of more) add(spec);
        refine(
          ROUNDS,
          more.map(({ cause }) => cause),
        );
      }
      return found(seen);
    },
    steps: () => [...tried.values()].flat().reduce((sum, { companion }) => sum + companion.steps(), 0),
  };

  /**
   * A car that shows what a sound car shows, at all that was seen, is called sound, and one with two faults that shows what
   * one of them does has that one: nobody could say more of it.
   */
  function found(seen: readonly Seen[]): readonly Fitted[] {
    const sum = logSum([...tried.keys()].map(beliefOf));
    return [...tried.keys()].map((cause) => {
      const own = bestOf(cause).companion;
      const simpler = [NOTHING_WRONG, ...causesIn(cause)]
        .filter((one) => one !== cause && tried.has(one))
        .map((one) => bestOf(one).companion)
        .find((one) => isLike(own, one, seen));
      return { spec: (simpler ?? own).spec, share: exp(beliefOf(cause) - sum) };
    });
  }

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

function logOf({ probe, value }: Seen, shown: number, atmospherePa: number): number {
  if (probe.unit === 'look') return value === shown ? RIGHT : WRONG;
  const off = Math.min(furthest(probe) / FINER, spreadsApart(probe, value, shown, atmospherePa, 0) / FINER);
  return -0.5 * off * off;
}
