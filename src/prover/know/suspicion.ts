/**
 * What the player that asks believes, reading by reading: of each cause, of each decision, and what a test could tell. When
 * not even the likeliest shows what was seen, it looks closer (`finerGhosts`): everything seen so far is then weighed again.
 */
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import type { Probe } from '../forecast/probe';
import { spreadOf } from '../forecast/spreadOf';
import { spreadsApart } from '../forecast/spreadsApart';
import { decisionOf } from './decisionOf';
import { type Belief, firstBelief, information, learn, type Seen, sharesBy, sharesOf } from './doubtOf';
import { finerGhosts } from './finerGhosts';
import { type Hypothesis, hypothesesOf } from './hypotheses';

export interface Likeliest {
  readonly decision: string;
  readonly share: number;
  /** The likeliest cause that asks for it. */
  readonly cause: string;
}

export interface Suspicion {
  /** `atLast`: when nothing left could tell anything. */
  likeliest(atLast?: boolean): Likeliest;
  /** Nats. */
  wouldTell(probes: readonly Probe[]): number;
  see(seen: readonly Seen[]): void;
  /** Whether it was unlike the likeliest and something could be done about that; once. */
  lookedCloser(): boolean;
}

/** A cause under this share is given up, as in `suspects/weighTrials` [guess]. */
const OUT = 1e-3;
/** So many spreads off is unlike it; so many readings unlike it are more than chance [guess]. */
const UNLIKE = 2.5;
const TOO_MANY = 2;
const LIKELIEST = 3;
/** Spreads over everything that was read, as a square sum [guess]. */
const ALIKE = 1;

export function suspicionOf(
  ensemble: readonly GhostSpec[],
  forecast: Forecast,
  known: ReadonlySet<string>,
  atmospherePa: number,
): Suspicion {
  let cars = ensemble;
  let hypotheses: readonly Hypothesis[] = [];
  let decisions: readonly string[] = [];
  let belief: Belief = [];
  let hasLookedCloser = false;
  const all: Seen[] = [];

  const weighAgain = (): void => {
    hypotheses = hypothesesOf(cars, forecast);
    decisions = hypotheses.map(({ cause }) => decisionOf(cause, known));
    belief = giveUp(learn(hypotheses, firstBelief(hypotheses), all, atmospherePa));
  };
  const byCause = (of: Belief): ReadonlyMap<string, number> =>
    sharesBy(
      hypotheses.map(({ cause }) => cause),
      sharesOf(of),
    );
  const giveUp = (of: Belief): Belief => {
    const shares = byCause(of);
    return of.map((log, at) =>
      (shares.get(hypotheses[at].cause) ?? 0) < OUT ? Number.NEGATIVE_INFINITY : log,
    );
  };
  const unlike = (): number => {
    const best = hypotheses[belief.indexOf(Math.max(...belief))];
    return all.filter(({ probe, value }) => {
      const shown = best.shows(probe);
      if (probe.unit === 'look' || Number.isNaN(shown)) return value !== shown;
      return Math.abs(value - shown) > UNLIKE * spreadOf(probe, shown, atmospherePa, best.wanders(probe));
    }).length;
  };
  /** What shows what a sound car shows, at all that was read, is called sound: nobody could say more of it. */
  const decisionsAtLast = (): readonly string[] => {
    const sound = hypotheses.find(({ cause }) => cause === NOTHING_WRONG);
    if (!sound) return decisions;
    const off = ({ shows, wanders }: Hypothesis): number =>
      all.reduce((sum, { probe }) => {
        const spreads = spreadsApart(probe, shows(probe), sound.shows(probe), atmospherePa, wanders(probe));
        return sum + spreads * spreads;
      }, 0);
    return decisions.map((decision, at) =>
      belief[at] > Number.NEGATIVE_INFINITY && off(hypotheses[at]) < ALIKE * ALIKE ? NOTHING_WRONG : decision,
    );
  };
  weighAgain();
  return {
    likeliest(atLast = false) {
      const [[decision, share]] = sorted(sharesBy(atLast ? decisionsAtLast() : decisions, sharesOf(belief)));
      const [[cause]] = sorted(byCause(belief)).filter(([one]) => decisionOf(one, known) === decision);
      return { decision, share, cause };
    },
    wouldTell: (probes) => information(hypotheses, belief, decisions, probes, atmospherePa),
    see(seen) {
      all.push(...seen);
      belief = giveUp(learn(hypotheses, belief, seen, atmospherePa));
    },
    lookedCloser() {
      if (hasLookedCloser || unlike() < TOO_MANY) return false;
      hasLookedCloser = true;
      const again = learn(hypotheses, firstBelief(hypotheses), all, atmospherePa);
      const causes = sorted(byCause(again)).map(([cause]) => cause);
      const more = finerGhosts(cars, causes.slice(0, LIKELIEST));
      cars = [...cars, ...more];
      weighAgain();
      return more.length > 0;
    },
  };
}

const sorted = (shares: ReadonlyMap<string, number>): [string, number][] =>
  [...shares].sort((a, b) => b[1] - a[1]);
