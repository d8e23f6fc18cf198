/**
 * A table of signs by fault, as trade texts print them, and what the model makes of each: shown, bent or not applicable.
 *
 * A row names a fault and, for each kind of metering device, what a gauge or thermometer should do against the same car
 * sound in the same weather. `up-or-same` and its like allow two answers where texts do. What nobody may be scored on
 * (sources or cars differ) is not in `signs`; a row says it in `unscored`.
 */
import type { PRINTED_SIGNS, SIGN_CHANNELS } from '../../../shared/schema/signWords';

export type SignChannel = (typeof SIGN_CHANNELS)[number];
export type Printed = (typeof PRINTED_SIGNS)[number];
export type Found = 'up' | 'same' | 'down';

export type SignsByChannel = Readonly<Partial<Record<SignChannel, Printed>>>;
export type MeteringKind = 'orifice-tube' | 'expansion-valve';

export interface SignRow {
  readonly row: string;
  readonly fault: string;
  /** What the row rests on: publications, or "common practice, no source". */
  readonly source: string;
  /** Severity at which the row is counted; 0.6 unless the row says otherwise. */
  readonly at?: number;
  /** The other severities that are run; a sign there may be missing, but not turned round. */
  readonly also?: readonly number[];
  /** The row hardly can fail, such as a seep that nothing tells today: it is judged and listed, but not in the share. */
  readonly surely?: true;
  readonly site?: string;
  readonly engineRpm?: number;
  readonly cabin?: 'open' | 'closed';
  readonly minutes?: number;
  /** degC; 21, 32 and 38 unless the row says otherwise. */
  readonly ambientsC?: readonly number[];
  readonly signs: Readonly<Partial<Record<MeteringKind, SignsByChannel>>>;
  readonly unscored?: Readonly<Partial<Record<MeteringKind, Readonly<Partial<Record<SignChannel, string>>>>>>;
}

export const COUNTED_AT = 0.6;
export const ALSO_AT: readonly number[] = [0.3, 0.9];
export const AMBIENTS_C: readonly number[] = [21, 32, 38];

export function allows(printed: Printed, found: Found, swings: boolean): boolean {
  const answers = printed.split('-or-');
  return answers.includes(found) || (swings && answers.includes('unsteady'));
}

/** The opposite of what is printed, which is worse than no sign at all. */
export function turnedRound(printed: Printed, found: Found): boolean {
  if (printed.startsWith('up')) return found === 'down';
  if (printed.startsWith('down')) return found === 'up';
  return printed === 'same' && found !== 'same';
}
