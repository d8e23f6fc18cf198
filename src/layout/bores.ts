/**
 * Widths of service fittings as they are told and drawn, by what is measured across them. Smaller and larger of a kind are
 * the two sides of one refrigerant: 13 and 16 mm (R-134a), 14 and 17 mm (R-1234yf), threads of 7/16 and 3/8 in.
 */
import type { BoreMm } from './layout';

const BORES: readonly BoreMm[] = [9.5, 11, 13, 14, 16, 17];
/** The other side's fitting of the same refrigerant. */
const OTHER: Readonly<Record<BoreMm, BoreMm>> = { 9.5: 11, 11: 9.5, 13: 16, 16: 13, 14: 17, 17: 14 };
const MM_PER_M = 1000;
const WIDEST_THREAD_MM = 12;

/** The nearest of the widths there are. */
export function boreOf(diameterM: number): BoreMm {
  const mm = diameterM * MM_PER_M;
  return BORES.reduce((best, bore) => (Math.abs(bore - mm) < Math.abs(best - mm) ? bore : best));
}

export const otherBore = (bore: BoreMm): BoreMm => OTHER[bore];

/** A coupler screws on; on all others it snaps. */
export const isThreaded = (bore: BoreMm): boolean => bore < WIDEST_THREAD_MM;

/** Which of its kind's two letters belongs on it. */
export const letterOf = (bore: BoreMm): 'L' | 'H' => (bore === 11 || bore === 13 || bore === 14 ? 'L' : 'H');
