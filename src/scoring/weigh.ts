/**
 * The second stage of a score: what the readings said about the cause, weighed with ghost cars, and the measures made of
 * it. It takes some seconds, so the score is shown without it first.
 *
 *   justified   0 at what was believed before anything was read, 1 from a share of 0.8, when the cause was named
 *   efficient   min(1, 1.5 C* / C): minutes of the cheapest way to this cause over minutes spent
 *   noiseless   1 - 0.1 for each trial that could tell nothing and each reading taken again
 *
 * Who named nothing, or read nothing before, has none of the three. A cause whose place is found by searching is proven by
 * what the search showed at that place; without that its readings are worth half [guess]. Of two claims of which one is
 * searched each counts by itself, and the mean is taken. Of a loop that came empty nothing is weighed.
 */

import { claimedCauses } from '../session/record/claimedCauses';
import type { MeasureId } from '../session/record/measures';
import type { SessionRecord } from '../session/record/record';
import { plantOptions } from '../session/scenario/plantOptions';
import type { Scenario } from '../session/scenario/scenario';
import { ensembleAt, type GhostSpec, pairOf } from '../suspects/causes';
import { cheapestWay } from '../suspects/cheapestWay';
import { isFoundThere } from '../suspects/foundThere';
import { buildGhost, type Ghost } from '../suspects/ghost';
import { isFoundBySearch, PROVEN, provenShare } from '../suspects/proven';
import { spentMinutes } from '../suspects/spentMinutes';
import { TELLS_NOTHING } from '../suspects/tellsNothing';
import { type Trials, trialsOf } from '../suspects/trials';
import { type WeighedTrials, weighTrials } from '../suspects/weighTrials';
import { type SuspectsLeft, suspectsLeft } from './suspectsLeft';

export interface Weighed {
  /** The same with its measures filled in. */
  readonly record: SessionRecord;
  readonly story: readonly SuspectsLeft[];
}

const SLACK = 1.5;
const NOISE = 0.1;
const UNSEARCHED_SHARE = 0.5;

/** Whether a loop holds anything for readings to be about. */
export const isWeighable = ({ data }: Scenario): boolean => data.contents.state !== 'evacuated';

/** `ensemble` other than all that may be wrong with this car is for tests. */
export function weigh(
  record: SessionRecord,
  scenario: Scenario,
  ensemble: readonly GhostSpec[] = ensembleAt(plantOptions(scenario.data, record.seed)),
): Weighed | null {
  if (!isWeighable(scenario)) return null;
  const hidden = scenario.answer.hidden ?? [];
  const options = plantOptions(scenario.data, record.seed);
  const claim = claimIn(record, hidden.length, scenario, buildGhost(options, ensemble[0]));
  const trials = trialsOf(record, claim.action);
  const cars = [...ensemble, ...pairOf(hidden)];
  const pair = pairOf(hidden).map(({ cause }) => cause);
  const keep = [...claim.causes, ...hidden, ...pair];
  const weighed = weighTrials(record, options, cars, trials, keep);
  const truths = pair.length > 0 ? pair.slice(0, 1) : trueSuspects(scenario, weighed.causes);
  const least = cheapestWay(options, cars, truths);
  const spent = spentMinutes(record, claim.action, claim.row, scenario.answer.parts);
  const measures = measuresOf(claim, trials, weighed, { least, spent });
  return {
    record: { ...record, measures: { ...record.measures, ...measures } },
    story: suspectsLeft(weighed),
  };
}

interface Claim {
  readonly causes: readonly string[];
  /** Those of them that a search showed where they are. */
  readonly found: readonly string[];
  /** Of the last cause named; past all where there is none. */
  readonly action: number;
  readonly row: number;
}

function claimIn(record: SessionRecord, hiddenCount: number, { data }: Scenario, any: Ghost): Claim {
  const { events, actions } = record;
  const named = events.filter(({ id }) => id === 'diagnosed');
  const last = actions.findLast(({ command }) => command.do === 'diagnose');
  const causes = claimedCauses(
    named.map(({ subject = '' }) => subject),
    hiddenCount,
  );
  const row = last?.row ?? Number.POSITIVE_INFINITY;
  const siteOf = (cause: string) => data.faults.find(({ fault }) => fault === cause)?.site;
  return {
    causes,
    found: causes
      .filter(isFoundBySearch)
      .filter((cause) => isFoundThere(record, row, any, { cause, site: siteOf(cause) })),
    action: last?.number ?? Number.POSITIVE_INFINITY,
    row,
  };
}

/** What is hidden as the ensemble has it: a leak that is found by searching reads as a loop that is short. */
function trueSuspects({ answer }: Scenario, suspects: readonly string[]): readonly string[] {
  const truths = answer.hidden && answer.hidden.length > 0 ? answer.hidden : answer.causes;
  return truths
    .map((cause) => (isFoundBySearch(cause) ? 'low-charge' : cause))
    .filter((cause) => suspects.includes(cause));
}

function measuresOf(
  claim: Claim,
  { trials, repeats }: Trials,
  { causes, prior, after }: WeighedTrials,
  { least, spent }: { readonly least: number; readonly spent: number },
): Partial<Record<MeasureId, number>> {
  const hasClaimed = claim.causes.length > 0 && trials.length > 0;
  const shares = after.at(-1)?.shares ?? prior;
  const noise = repeats + after.filter(({ information }) => information < TELLS_NOTHING).length;
  const justified = justifiedShare(claim, causes, prior, shares);
  return {
    'diagnosis.justified': hasClaimed ? justified : 0,
    'diagnosis.efficient': Number.isNaN(least) || !hasClaimed ? 0 : Math.min(1, (SLACK * least) / spent),
    'diagnosis.noiseless': hasClaimed ? Math.max(0, 1 - NOISE * noise) : 0,
    'diagnosis.leftCount': suspectsLeft({ causes, prior, after }).at(-1)?.left.length ?? causes.length,
    'diagnosis.spentMinutes': spent,
    'diagnosis.leastMinutes': least,
    'diagnosis.noiseCount': noise,
  };
}

function justifiedShare(
  claim: Claim,
  causes: readonly string[],
  prior: readonly number[],
  shares: readonly number[],
): number {
  const byReading = (claimed: readonly string[]): number =>
    linear(provenShare(causes, shares, claimed), provenShare(causes, prior, claimed));
  if (!claim.causes.some(isFoundBySearch)) return byReading(claim.causes);
  const each = claim.causes.map((cause) => {
    if (!isFoundBySearch(cause)) return byReading([cause]);
    return claim.found.includes(cause) ? 1 : UNSEARCHED_SHARE * byReading([cause]);
  });
  return each.reduce((sum, share) => sum + share, 0) / each.length;
}

function linear(share: number, before: number): number {
  return Math.max(0, Math.min(1, (share - before) / (PROVEN - before)));
}
