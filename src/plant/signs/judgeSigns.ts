/** Runs the rows of a table of signs on one car: every severity and weather of a row, each against the same car sound. */
import { SIGN_CHANNELS } from '../../../shared/schema/signWords';
import { faultIds, faultOf } from '../../faults/registry';
import { vehicleOf } from '../../loop/car/vehicles';
import { type LoopResult, type LoopRun, runLoop } from '../runLoop';
import { type Change, changes } from './changes';
import {
  ALSO_AT,
  AMBIENTS_C,
  allows,
  COUNTED_AT,
  type Found,
  type Printed,
  type SignChannel,
  type SignRow,
  type SignsByChannel,
  turnedRound,
} from './signTable';

/**
 * `shown` as printed; `faint`: none yet, at a severity that is not counted; `bent`: otherwise. `none-to-lose`: printed
 * down, of what the sound car has not got in that weather, and `sweeps`: a steady low side is printed, and the clutch of the
 * sick car cycles, so that the needle has no value (cycling has a sign of its own); neither applies.
 */
export type Verdict = 'shown' | 'faint' | 'bent' | 'none-to-lose' | 'sweeps';

export const doesApply = ({ verdict }: Pick<SignJudged, 'verdict'>): boolean =>
  verdict !== 'none-to-lose' && verdict !== 'sweeps';

export interface SignJudged {
  readonly row: string;
  readonly fault: string;
  readonly severity: number;
  /** At the severity of its row, where it must be shown. */
  readonly counted: boolean;
  /** In the share of shown signs: counted at 0.6, in a row that can fail. */
  readonly inShare: boolean;
  readonly ambientC: number;
  readonly channel: SignChannel;
  readonly printed: Printed;
  readonly found: Found;
  readonly swings: boolean;
  /** Change against the sound car, and what counts as none, in the unit of `Change`. */
  readonly by: number;
  readonly still: number;
  readonly verdict: Verdict;
}

export interface RowJudged {
  readonly row: string;
  readonly fault: string;
  /** Why the row says nothing about this car; null where it does. */
  readonly notApplicable: 'fault' | 'metering' | null;
  readonly signs: readonly SignJudged[];
}

/** `all`: each severity in each weather. `counted`: the one of the row. */
export type Extent = 'all' | 'counted';

const ZERO_C = 273.15;
const SECONDS_A_MINUTE = 60;
const MINUTES = 5;
const AVERAGE_S = 150;
const ENGINE_RPM = 1500;
const STATIC_S = 4;

/** Throws `RangeError` for a row about a fault that there is not. */
export function judgeRow(vehicleId: string, row: SignRow, extent: Extent = 'all'): RowJudged {
  const vehicle = vehicleOf(vehicleId);
  const { row: name, fault } = row;
  if (!faultIds.includes(fault)) throw new RangeError(`row "${name}": no fault "${fault}"`);
  const printed = row.signs[vehicle.metering.kind];
  if (!faultOf(fault).applies(vehicle)) return { row: name, fault, notApplicable: 'fault', signs: [] };
  if (!printed) return { row: name, fault, notApplicable: 'metering', signs: [] };
  const counted = row.at ?? COUNTED_AT;
  const ambients = row.ambientsC ?? AMBIENTS_C;
  const also = extent === 'all' ? (row.also ?? ALSO_AT) : [];
  const severities = [counted, ...also].sort((a, b) => a - b);
  const signs = severities.flatMap((severity) =>
    ambients.flatMap((ambientC) =>
      judgeRun(vehicleId, row, printed, severity, severity === counted, ambientC),
    ),
  );
  return { row: name, fault, notApplicable: null, signs };
}

function judgeRun(
  vehicleId: string,
  row: SignRow,
  wanted: SignsByChannel,
  severity: number,
  counted: boolean,
  ambientC: number,
): SignJudged[] {
  const changed = foundIn(vehicleId, row, wanted, severity, ambientC);
  return SIGN_CHANNELS.flatMap((channel) => {
    const printed = wanted[channel];
    if (!printed) return [];
    const { found, by, still, swings } = changed[channel];
    const sweeps = channel === 'low' && swings && !printed.includes('unsteady');
    const verdict = sweeps ? 'sweeps' : verdictOf(printed, changed[channel], counted);
    const { row: name, fault } = row;
    const inShare = counted && severity === COUNTED_AT && row.surely !== true;
    const judged = { row: name, fault, severity, counted, inShare, ambientC, channel, printed };
    return [{ ...judged, found, swings, by, still, verdict }];
  });
}

function verdictOf(printed: Printed, { found, swings, noneToLose }: Change, counted: boolean): Verdict {
  if (allows(printed, found, swings)) return 'shown';
  if (noneToLose && printed === 'down') return 'none-to-lose';
  return counted || turnedRound(printed, found) ? 'bent' : 'faint';
}

function foundIn(
  vehicleId: string,
  row: SignRow,
  printed: SignsByChannel,
  severity: number,
  ambientC: number,
): Readonly<Record<SignChannel, Change>> {
  const sick = [{ id: row.fault, severity, ...(row.site === undefined ? {} : { site: row.site }) }];
  const run = runOf(vehicleId, row, ambientC);
  const resting: LoopRun = { ...run, engineRevPerS: 0, durationS: STATIC_S, averageS: 1 };
  const atRest = printed.static ? ([known(resting), runLoop({ ...resting, faults: sick })] as const) : null;
  return changes(known(run), runLoop({ ...run, faults: sick }), atRest);
}

function runOf(vehicleId: string, row: SignRow, ambientC: number): LoopRun {
  return {
    vehicle: vehicleId,
    refrigerant: vehicleOf(vehicleId).label.refrigerant,
    ambientK: ambientC + ZERO_C,
    relativeHumidity: 0.5,
    engineRevPerS: (row.engineRpm ?? ENGINE_RPM) / SECONDS_A_MINUTE,
    durationS: (row.minutes ?? MINUTES) * SECONDS_A_MINUTE,
    averageS: AVERAGE_S,
    cabin: row.cabin ?? 'open',
    chargeShare: 1,
    faults: [],
    start: 'equalised',
  };
}

const sound = new Map<string, LoopResult>();

/** Sound cars are run once a weather. */
function known(run: LoopRun): LoopResult {
  const key = JSON.stringify(run);
  const result = sound.get(key) ?? runLoop(run);
  sound.set(key, result);
  return result;
}
