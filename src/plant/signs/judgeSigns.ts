/** Runs the rows of a table of signs on one car: every severity and weather of a row, each against the same car sound. */
import { SIGN_CHANNELS } from '../../../shared/schema/signWords';
import { faultIds, faultOf } from '../../faults/registry';
import { vehicleOf } from '../../loop/car/vehicles';
import { type LoopResult, type LoopRun, runLoop } from '../runLoop';
import { changes } from './changes';
import {
  ALSO_AT,
  AMBIENTS_C,
  allows,
  COUNTED_AT,
  type Found,
  type Printed,
  type SignChannel,
  type SignRow,
  turnedRound,
} from './signTable';

/** `shown` as printed; `faint`: none yet, at a severity that is not counted; `bent`: otherwise. */
export type Verdict = 'shown' | 'faint' | 'bent';

export interface SignJudged {
  readonly row: string;
  readonly fault: string;
  readonly severity: number;
  readonly counted: boolean;
  readonly ambientC: number;
  readonly channel: SignChannel;
  readonly printed: Printed;
  readonly found: Found;
  readonly verdict: Verdict;
}

export interface RowJudged {
  readonly row: string;
  readonly fault: string;
  /** Why the row says nothing about this car; null where it does. */
  readonly notApplicable: 'fault' | 'metering' | null;
  readonly signs: readonly SignJudged[];
}

const ZERO_C = 273.15;
const SECONDS_A_MINUTE = 60;
const MINUTES = 7;
const AVERAGE_S = 180;
const ENGINE_RPM = 1500;
const STATIC_S = 4;

/** Throws `RangeError` for a row about a fault that there is not. */
export function judgeRow(vehicleId: string, row: SignRow): RowJudged {
  const vehicle = vehicleOf(vehicleId);
  const { row: name, fault } = row;
  if (!faultIds.includes(fault)) throw new RangeError(`row "${name}": no fault "${fault}"`);
  const printed = row.signs[vehicle.metering.kind];
  if (!faultOf(fault).applies(vehicle)) return { row: name, fault, notApplicable: 'fault', signs: [] };
  if (!printed) return { row: name, fault, notApplicable: 'metering', signs: [] };
  const counted = row.at ?? COUNTED_AT;
  const signs = [counted, ...(row.also ?? ALSO_AT)].flatMap((severity) =>
    (row.ambientsC ?? AMBIENTS_C).flatMap((ambientC) =>
      judgeRun(vehicleId, row, printed, severity, severity === counted, ambientC),
    ),
  );
  return { row: name, fault, notApplicable: null, signs };
}

function judgeRun(
  vehicleId: string,
  row: SignRow,
  printed: Readonly<Partial<Record<SignChannel, Printed>>>,
  severity: number,
  counted: boolean,
  ambientC: number,
): SignJudged[] {
  const found = foundIn(vehicleId, row, printed, severity, ambientC);
  return SIGN_CHANNELS.flatMap((channel) => {
    const wanted = printed[channel];
    if (!wanted) return [];
    const verdict = verdictOf(wanted, found[channel], counted);
    const { row: name, fault } = row;
    return [
      {
        row: name,
        fault,
        severity,
        counted,
        ambientC,
        channel,
        printed: wanted,
        found: found[channel],
        verdict,
      },
    ];
  });
}

function verdictOf(printed: Printed, found: Found, counted: boolean): Verdict {
  if (allows(printed, found)) return 'shown';
  return counted || turnedRound(printed, found) ? 'bent' : 'faint';
}

function foundIn(
  vehicleId: string,
  row: SignRow,
  printed: Readonly<Partial<Record<SignChannel, Printed>>>,
  severity: number,
  ambientC: number,
): Readonly<Record<SignChannel, Found>> {
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
