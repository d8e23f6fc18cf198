/**
 * A closer look at the likeliest causes, by ghosts that live the very session (`company`), each cause at the severity that
 * fits (`searchSeverities`). Where none of them shows what was seen, the next are tried.
 *
 *   log belief(cause) = ln prior + log likelihood of all that was seen, at the severity that fits best
 *
 * So it does not matter how many severities of a cause were tried.
 */
import type { ScenarioData } from '../../../shared/schema/scenario';
import { exp } from '../../numerics/exp';
import { ln } from '../../numerics/ln';
import { NOTHING_WRONG } from '../../plant/faultBook';
import { causesIn, type GhostSpec, priorsOf } from '../../suspects/causes';
import { logSum } from '../../suspects/likelihood';
import type { Forecast } from '../forecast/forecastOf';
import { spreadsApart } from '../forecast/spreadsApart';
import { companyIn, type Member, type SoFar } from './company';
import type { Seen } from './doubtOf';
import { searchSeverities } from './searchSeverities';

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
  look(soFar: SoFar): readonly Fitted[];
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

/** So many causes at once and no fewer. */
const AT_ONCE = 7;
/** Nats a reading: worse on the mean, and it is something else [guess]. */
const POOR = -3;
/** Spreads over everything that was read, as a square sum [guess]. */
const ALIKE = 1;

export function closerLookAt(
  data: ScenarioData,
  seed: number,
  { specs, believed }: Candidates,
  forecast: Forecast,
): CloserLook {
  const company = companyIn(data, seed, forecast);
  const causes = specs.map(({ cause }) => cause);
  const priors = priorsOf(causes).map(ln);
  const beliefOf = (cause: string): number => priors[causes.indexOf(cause)] + company.best(cause).fit;
  const isAlive = (cause: string): boolean => company.best(cause).fit > Number.NEGATIVE_INFINITY;
  const fitted = (): readonly Fitted[] => {
    const sum = logSum(company.causes().map(beliefOf));
    return company.causes().map((cause) => ({
      spec: company.best(cause).spec,
      share: exp(beliefOf(cause) - sum),
    }));
  };
  const isLike = (one: Member, other: Member, seen: readonly Seen[]): boolean => {
    const squares = seen.map(({ probe }, at) => {
      const off = spreadsApart(probe, one.shows[at], other.shows[at], company.atmospherePa, 0);
      return off * off;
    });
    return squares.reduce((sum, square) => sum + square, 0) < ALIKE;
  };
  return {
    look(soFar) {
      const { seen } = soFar;
      company.liveTo(soFar);
      searchSeverities(company, company.causes().filter(isAlive), seen);
      while (company.causes().length < specs.length && company.bestFit() <= POOR * seen.length) {
        const from = company.causes().length;
        const more = specs.slice(from, Math.max(believed, from + AT_ONCE));
        for (const spec of more) company.add(spec);
        searchSeverities(
          company,
          more.map(({ cause }) => cause),
          seen,
        );
      }
      return fitted();
    },
    atLast: (seen) =>
      fitted().map((one) => {
        const own = company.best(one.spec.cause);
        const simpler = [NOTHING_WRONG, ...causesIn(one.spec.cause)]
          .filter((cause) => cause !== one.spec.cause && company.causes().includes(cause))
          .map((cause) => company.best(cause))
          .find((other) => isLike(own, other, seen));
        return simpler ? { ...one, spec: simpler.spec } : one;
      }),
    bestOf: (cause) => (company.causes().includes(cause) ? company.best(cause).spec : null),
    steps: () => company.steps(),
  };
}
