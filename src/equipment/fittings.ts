/**
 * What goes on what: service fittings by refrigerant and side, and the one rule that decides. A coupler goes on only
 * where standard and size both agree, so a low-side coupler cannot reach the high side of the same car.
 *
 * Principle: 40 CFR 82 subpart G, appendix H (high and low side of each refrigerant differ from one another and from
 * every other refrigerant's). Sizes from memory; check the current rule and the car's service information.
 */
import type { RefrigerantId } from '../refrigerant/refrigerant';

export type FittingId =
  | 'r134a-13'
  | 'r134a-16'
  | 'r1234yf-14'
  | 'r1234yf-17'
  | 'r12-seven-sixteenths'
  | 'r12-three-eighths';

export interface Fitting {
  readonly id: FittingId;
  readonly refrigerant: RefrigerantId;
  readonly kind: 'snap-on' | 'thread';
  /** Outside diameter that the coupler slides or screws over. */
  readonly diameterM: number;
}

export const fittings: Readonly<Record<FittingId, Fitting>> = {
  'r134a-13': { id: 'r134a-13', refrigerant: 'R-134a', kind: 'snap-on', diameterM: 0.013 },
  'r134a-16': { id: 'r134a-16', refrigerant: 'R-134a', kind: 'snap-on', diameterM: 0.016 },
  'r1234yf-14': { id: 'r1234yf-14', refrigerant: 'R-1234yf', kind: 'snap-on', diameterM: 0.014 },
  'r1234yf-17': { id: 'r1234yf-17', refrigerant: 'R-1234yf', kind: 'snap-on', diameterM: 0.017 },
  'r12-seven-sixteenths': {
    id: 'r12-seven-sixteenths',
    refrigerant: 'R-12',
    kind: 'thread',
    diameterM: 0.0111125,
  },
  'r12-three-eighths': { id: 'r12-three-eighths', refrigerant: 'R-12', kind: 'thread', diameterM: 0.009525 },
};

const SIDES: Readonly<Record<RefrigerantId, Readonly<Record<'low' | 'high', FittingId>>>> = {
  'R-134a': { low: 'r134a-13', high: 'r134a-16' },
  'R-1234yf': { low: 'r1234yf-14', high: 'r1234yf-17' },
  'R-12': { low: 'r12-seven-sixteenths', high: 'r12-three-eighths' },
};

/** What a refrigerant's service ports and couplers are on a side. */
export const fittingOf = (refrigerant: RefrigerantId, side: 'low' | 'high'): FittingId =>
  SIDES[refrigerant][side];

export type Fit = 'fits' | 'other-kind' | 'too-narrow' | 'too-wide' | 'other-refrigerant';

/** Whether a coupler made for `coupler` goes on the port `port`, and if not, what a hand would feel. */
export function fit(coupler: FittingId, port: FittingId): Fit {
  if (coupler === port) return 'fits';
  const mine = fittings[coupler];
  const theirs = fittings[port];
  if (mine.kind !== theirs.kind) return 'other-kind';
  if (mine.diameterM < theirs.diameterM) return 'too-narrow';
  if (mine.diameterM > theirs.diameterM) return 'too-wide';
  return 'other-refrigerant';
}
