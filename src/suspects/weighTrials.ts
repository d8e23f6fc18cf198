/**
 * A session lived through by all ghosts side by side, up to the cause being named, and what was believed after each trial.
 * Only ghosts that matter are kept: after each trial those of a cause that is as good as out are given up, unless it is
 * one of `keep`. What is given up together weighs some per cent at most, and saves most of the time.
 */
import type { PlantOptions } from '../plant/buildPlant';
import type { SessionRecord } from '../session/record/record';
import { type Belief, benchOf, firstBelief, information, learn, sharesOf } from './belief';
import type { GhostSpec } from './causes';
import { expected } from './expectation';
import { buildGhost, type Ghost } from './ghost';
import type { Observation } from './observation';
import type { Trials } from './trials';

/** A cause under this share is as good as out [guess]. */
const OUT = 1e-3;

export interface WeighedTrial {
  readonly seen: readonly Observation[];
  /** What it could have told, in nats. */
  readonly information: number;
  /** Share of each cause afterwards. */
  readonly shares: readonly number[];
}

export interface WeighedTrials {
  readonly causes: readonly string[];
  readonly prior: readonly number[];
  readonly after: readonly WeighedTrial[];
}

export function weighTrials(
  record: SessionRecord,
  options: PlantOptions,
  ensemble: readonly GhostSpec[],
  { trials }: Trials,
  keep: readonly string[],
): WeighedTrials {
  const lives: (Life | null)[] = ensemble.map((spec) => lifeOf(record, buildGhost(options, spec)));
  const bench = benchOf(ensemble, buildGhost(options, ensemble[0]));
  let belief = firstBelief(bench);
  const prior = sharesOf(belief);
  const after = trials.map((seen): WeighedTrial => {
    const shows = lives.map((life) => seen.map((one) => life?.showsAt(one) ?? Number.NaN));
    const told = information(bench, belief, seen, shows);
    const learnt = learn(
      bench,
      belief,
      seen,
      shows,
      seen.map(({ value }) => value),
    );
    const shares = sharesOf(learnt);
    belief = givenUp(learnt, (cause) => shares[cause] < OUT && !keep.includes(bench.causes[cause]));
    bench.causeAt.forEach((cause, ghost) => {
      if (belief[cause] === Number.NEGATIVE_INFINITY) lives[ghost] = null;
    });
    return { seen, information: told, shares: sharesOf(belief) };
  });
  return { causes: bench.causes, prior, after };
}

const givenUp = (belief: Belief, isOut: (cause: number) => boolean): Belief =>
  belief.map((log, cause) => (isOut(cause) ? Number.NEGATIVE_INFINITY : log));

interface Life {
  /** What the ghost shows at an observation; in the order taken. */
  showsAt(seen: Observation): number;
}

function lifeOf({ actions }: SessionRecord, ghost: Ghost): Life {
  let done = 0;
  return {
    showsAt(seen) {
      while (done < actions.length && actions[done].number <= seen.action) {
        ghost.runTo(actions[done].step);
        ghost.perform(actions[done].command);
        done++;
      }
      return expected(ghost, seen);
    },
  };
}
