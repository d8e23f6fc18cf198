/**
 * What the player that asks believes, reading by reading, as far as forecasts go: of each cause, of each decision, and what
 * a test could tell. Where that is not enough, `candidates` are those a closer look is worth, and `settle` takes over what it
 * found.
 */
import { ln } from '../../numerics/ln';
import { NOTHING_WRONG } from '../../plant/faultBook';
import type { GhostSpec } from '../../suspects/causes';
import type { Forecast } from '../forecast/forecastOf';
import type { Probe } from '../forecast/probe';
import { spreadOf } from '../forecast/spreadOf';
import type { StageId } from '../forecast/stages';
import type { Candidates, Fitted } from './closerLook';
import { decisionOf } from './decisionOf';
import { type Belief, firstBelief, information, learn, type Seen, sharesBy, sharesOf } from './doubtOf';
import { fittedOf, hypothesesOf } from './hypotheses';

export interface Likeliest {
  readonly decision: string;
  readonly share: number;
  /** The likeliest cause that asks for it. */
  readonly cause: string;
  /** A car of that cause that shows it best. */
  readonly spec: GhostSpec;
}

export interface Suspicion {
  likeliest(): Likeliest;
  /** Nats. */
  wouldTell(probes: readonly Probe[]): number;
  see(seen: readonly Seen[]): void;
  /** Whether not even the likeliest shows what was seen. */
  isUnlike(): boolean;
  /** To be asked before anything is settled. */
  candidates(): Candidates;
  /** What is known better; nothing else is believed in from here on. */
  settle(fitted: readonly Fitted[]): void;
}

/** A cause under this share is given up, as in `suspects/weighTrials` [guess]. */
const OUT = 1e-3;
const GIVEN_UP = Number.NEGATIVE_INFINITY;
/** A cause over this share is looked at with the first [guess]. */
const HARDLY = 0.01;
/** So many spreads off is unlike it; so many readings unlike it are more than chance [guess]. */
const UNLIKE = 2.5;
const TOO_MANY = 2;
/** Stages that are short and come first: every ghost is lived through them, whatever is believed of it. */
const ASKED_OF_ALL: readonly StageId[] = ['rest', 'running'];
/** What a forecast is worth once it was wrong [guess]. */
const TEMPER = 0.3;

export function suspicionOf(
  ensemble: readonly GhostSpec[],
  forecast: Forecast,
  known: ReadonlySet<string>,
  atmospherePa: number,
): Suspicion {
  let hypotheses = hypothesesOf(ensemble, forecast);
  let causes = hypotheses.map(({ cause }) => cause);
  let decisions = causes.map((cause) => decisionOf(cause, known));
  const first = firstBelief(hypotheses);
  const seenSoFar: Seen[] = [];

  const byCause = (of: Belief): ReadonlyMap<string, number> => sharesBy(causes, sharesOf(of));
  const giveUp = (of: Belief): Belief => {
    const shares = byCause(of);
    return of.map((log, at) => ((shares.get(causes[at]) ?? 0) < OUT ? GIVEN_UP : log));
  };
  let belief = giveUp(first);
  const likeliestAt = (of: Belief): number => of.indexOf(Math.max(...of));
  const tempered = (): Belief => {
    const asked = seenSoFar.filter(({ probe }) => ASKED_OF_ALL.includes(probe.stage));
    const learnt = learn(hypotheses, first, asked, atmospherePa);
    return first.map((log, at) => log + TEMPER * (learnt[at] - log));
  };
  const bestOf = (cause: string, of: Belief): GhostSpec =>
    hypotheses[likeliestAt(of.map((log, at) => (causes[at] === cause ? log : GIVEN_UP)))].spec;
  return {
    likeliest() {
      const [[decision, share]] = sorted(sharesBy(decisions, sharesOf(belief)));
      const [[cause]] = sorted(byCause(belief)).filter(([one]) => decisionOf(one, known) === decision);
      return { decision, share, cause, spec: bestOf(cause, belief) };
    },
    wouldTell: (probes) => information(hypotheses, belief, decisions, probes, atmospherePa),
    see(seen) {
      seenSoFar.push(...seen);
      belief = giveUp(learn(hypotheses, belief, seen, atmospherePa));
    },
    isUnlike() {
      const best = hypotheses[likeliestAt(belief)];
      const unlike = seenSoFar.filter(({ probe, value }) => {
        const shown = best.shows(probe);
        if (probe.unit === 'look' || Number.isNaN(shown)) return value !== shown;
        return Math.abs(value - shown) > UNLIKE * spreadOf(probe, shown, atmospherePa, best.wanders(probe));
      });
      return unlike.length >= TOO_MANY;
    },
    candidates() {
      const shares = byCause(belief);
      const milder = tempered();
      const believed = [...sorted(shares)].flatMap(([cause, share]) => (share > HARDLY ? [cause] : []));
      const named = new Set([NOTHING_WRONG, ...believed, ...sorted(byCause(milder)).map(([cause]) => cause)]);
      return {
        specs: [...named].map((cause) => bestOf(cause, (shares.get(cause) ?? 0) > 0 ? belief : milder)),
        believed: new Set([NOTHING_WRONG, ...believed]).size,
      };
    },
    settle(fitted) {
      const left = fitted.filter(({ share }) => share >= OUT);
      hypotheses = left.map(({ spec }) => fittedOf(spec, forecast));
      causes = hypotheses.map(({ cause }) => cause);
      decisions = causes.map((cause) => decisionOf(cause, known));
      belief = left.map(({ share }) => ln(share));
    },
  };
}

const sorted = (shares: ReadonlyMap<string, number>): [string, number][] =>
  [...shares].sort((a, b) => b[1] - a[1]);
