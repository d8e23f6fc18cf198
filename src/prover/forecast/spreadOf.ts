/**
 * How far a reading may be from what a ghost shows and still be its own: one standard deviation. It is the spread of
 * `suspects/likelihood`, 4.5 % of the absolute pressure and 1.5 K, with what the instrument adds. For what that does not
 * have: breath at the vents 0.09 (an eye tells eighths), a gas's share 0.01, a charge that was taken out and weighed 15 g
 * (oil and hoses keep some). Estimates, no source.
 */
import type { Probe } from './probe';

const SPREAD_OF_PRESSURE = 0.045;
const SPREAD_K = 1.6;
const SPREAD_OF_BREATH = 0.09;
const SPREAD_OF_SHARE = 0.01;
const SPREAD_KG = 0.015;

/** `wanderK`: how far a thermometer went while it was watched; one is read after the other, so it may have gone on. */
export function spreadOf(
  { unit, tool }: Pick<Probe, 'unit' | 'tool'>,
  shown: number,
  atmospherePa: number,
  wanderK = 0,
): number {
  switch (unit) {
    case 'Pa':
      return SPREAD_OF_PRESSURE * (shown + atmospherePa);
    case 'K':
      return Math.sqrt(SPREAD_K * SPREAD_K + wanderK * wanderK);
    case 'kg':
      return SPREAD_KG;
    default:
      return tool === 'identifier' ? SPREAD_OF_SHARE : SPREAD_OF_BREATH;
  }
}
