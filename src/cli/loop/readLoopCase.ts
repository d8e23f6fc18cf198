/** Turns the options of `loop`, or one line of its cases file, into a run. Every complaint says what would be right. */

import type { ActiveFault } from '../../faults/fault';
import { clash, faultIds, faultOf } from '../../faults/registry';
import { vehicleIds, vehicleOf } from '../../loop/car/vehicles';
import type { LoopRun } from '../../plant/runLoop';
import { REFRIGERANT_IDS } from '../../refrigerant/fluids';
import { parseQuantity, QuantityError } from '../../units/quantity';
import type { QuantityKind } from '../../units/unitTable';
import { say } from '../../words/words';
import { UsageError } from '../verb';
import { plainNumber } from '../writtenNumber';
import { inWrittenUnit } from './inWrittenUnit';

/** As written by a person; the same names on the command line and in a cases file. */
export interface LoopCase {
  readonly vehicle?: string | undefined;
  readonly ambient?: string | undefined;
  readonly humidity?: string | undefined;
  readonly rpm?: string | undefined;
  readonly minutes?: string | undefined;
  readonly cabin?: string | undefined;
  readonly charge?: string | undefined;
  readonly refrigerant?: string | undefined;
  readonly fault?: readonly string[] | undefined;
  readonly engine?: string | undefined;
  readonly start?: string | undefined;
  readonly average?: string | undefined;
}

export const CASE_KEYS = [
  'vehicle',
  'ambient',
  'humidity',
  'rpm',
  'minutes',
  'cabin',
  'charge',
  'refrigerant',
  'fault',
  'engine',
  'start',
  'average',
] as const satisfies readonly (keyof LoopCase)[];

const USUAL_AVERAGE_S = 300;

export function readLoopCase(given: LoopCase): LoopRun {
  if (given.vehicle === undefined || given.ambient === undefined)
    throw new UsageError(say({ id: 'loop.need' }));
  const vehicle = oneOf('vehicle', given.vehicle, vehicleIds);
  const engineOff = oneOf('engine', given.engine ?? 'on', ['on', 'off'] as const) === 'off';
  const durationS = 60 * number('minutes', given.minutes ?? '15', 0.05, 1440, 'min');
  const rpm = number('rpm', given.rpm ?? '1500', 500, 6000, 'rpm');
  const averageS =
    given.average === undefined ? USUAL_AVERAGE_S : quantity('average', given.average, 'time', 1, 86400);
  return {
    vehicle,
    refrigerant: oneOf(
      'refrigerant',
      given.refrigerant ?? vehicleOf(vehicle).label.refrigerant,
      REFRIGERANT_IDS,
    ),
    ambientK: quantity('ambient', given.ambient, 'temperature', 263.15, 323.15),
    relativeHumidity: quantity('humidity', given.humidity ?? '50%', 'ratio', 0, 1),
    engineRevPerS: engineOff ? 0 : rpm / 60,
    durationS,
    averageS: Math.min(averageS, durationS),
    cabin: oneOf('cabin', given.cabin ?? 'open', ['open', 'closed'] as const),
    chargeShare: quantity('charge', given.charge ?? '100%', 'ratio', 0, 2.5),
    faults: readFaults(vehicle, given.fault ?? []),
    start: oneOf('start', given.start ?? 'equalised', ['equalised', 'soaked'] as const),
  };
}

function readFaults(vehicle: string, written: readonly string[]): ActiveFault[] {
  const faults = written.map(readFault);
  for (const { id } of faults) {
    if (!faultOf(id).applies(vehicleOf(vehicle)))
      throw new UsageError(say({ id: 'loop.doesNotApply', values: { fault: id } }));
  }
  const twice = faults.find(({ id }, i) => faults.findIndex((other) => other.id === id) < i);
  if (twice) throw new UsageError(say({ id: 'loop.faultTwice', values: { fault: twice.id } }));
  const pair = clash(faults.map(({ id }) => id));
  if (pair) throw new UsageError(say({ id: 'loop.clash', values: { first: pair[0], second: pair[1] } }));
  return faults;
}

function readFault(text: string): ActiveFault {
  const [id, written = '', ...rest] = text.split('=');
  const severity = plainNumber(written) ?? Number.NaN;
  const fine = rest.length === 0 && faultIds.includes(id) && severity >= 0 && severity <= 1;
  if (!fine)
    throw new UsageError(say({ id: 'loop.notAFault', values: { given: text, known: faultIds.join(', ') } }));
  return { id, severity };
}

function oneOf<Value extends string>(option: string, given: string, allowed: readonly Value[]): Value {
  const found = allowed.find((value) => value === given);
  if (found !== undefined) return found;
  throw new UsageError(say({ id: 'loop.unknown', values: { option, given, allowed: allowed.join(', ') } }));
}

function number(option: string, given: string, least: number, most: number, unit: string): number {
  const value = plainNumber(given);
  if (value === undefined) throw new UsageError(say({ id: 'loop.notANumber', values: { option, given } }));
  if (value >= least && value <= most) return value;
  throw outOfRange(option, given, `${least} ${unit}`, `${most} ${unit}`);
}

function quantity(option: string, given: string, kind: QuantityKind, least: number, most: number): number {
  const value = parsed(option, given, kind);
  if (value >= least && value <= most) return value;
  throw outOfRange(option, given, inWrittenUnit(least, given, kind), inWrittenUnit(most, given, kind));
}

function parsed(option: string, given: string, kind: QuantityKind): number {
  try {
    return parseQuantity(given, kind);
  } catch (error) {
    if (error instanceof QuantityError) throw new UsageError(`--${option} ${error.message}`);
    throw error;
  }
}

const outOfRange = (option: string, given: string, least: string, most: string): UsageError =>
  new UsageError(say({ id: 'loop.range', values: { option, given, least, most } }));
