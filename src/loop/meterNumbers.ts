/**
 * What each metering device keeps beside the memory every link has: what faults left of it, and the state of the line
 * before it, of its bulb and of the ice in it. A name gives its place; all stand in the network's one array.
 */
import { METER_NUMBERS, type NetworkNumbers } from './networkNumbers';

const NAMES = [
  // set from outside
  /** Open area in the drier and at the end of the liquid line, discharge coefficient included, m2; 0: nothing in the way. */
  'drierAreaM2',
  'lineAreaM2',
  /** Area over the device's own, and how far its needle can go. */
  'area',
  'leastLift',
  'mostLift',
  'bulbCharge',
  'bulbLoose',
  // state
  /** Total pressure right before the device, Pa. */
  'beforePa',
  /** The pipe's wall behind the drier, and at the end of the line. */
  'behindDrierK',
  'lineEndK',
  'iceKg',
  'thawing',
  'bodyK',
  'bulbLine0K',
  'bulbLine1K',
  'bulbLine2K',
] as const;

export type MeterName = (typeof NAMES)[number];
export const METER = Object.fromEntries(NAMES.map((name, i) => [name, i])) as Readonly<
  Record<MeterName, number>
>;

/** A device just fitted: sound, and without a past. */
export function fitMeter(numbers: NetworkNumbers, l: number): void {
  const at = METER_NUMBERS * l;
  numbers.meter.fill(0, at, at + METER_NUMBERS);
  numbers.meter[at + METER.area] = 1;
  numbers.meter[at + METER.mostLift] = 1;
  numbers.meter[at + METER.bulbCharge] = 1;
}
