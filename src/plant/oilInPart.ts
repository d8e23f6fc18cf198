/**
 * Share of the loop's oil that comes off with a part. From the amounts a maker's bulletin has added to 270 mL with a new
 * part: drier 105 mL, evaporator 90, condenser 30; the compressor holds most of the rest [guess], a line next to none.
 */
const SHARES: Readonly<Record<string, number>> = {
  drier: 0.3,
  accumulator: 0.3,
  evaporator: 0.25,
  condenser: 0.1,
  compressor: 0.3,
};
const LINE_SHARE = 0.02;

export function oilInPart(part: string, kind: 'part' | 'line' | 'port' | 'joint'): number {
  if (kind === 'part') return SHARES[part] ?? 0;
  return kind === 'line' ? LINE_SHARE : 0;
}
