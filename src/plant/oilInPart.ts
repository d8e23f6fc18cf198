/**
 * Share of the loop's oil that comes off with a part, or what its side holds outside the compressor, if that is less. From
 * the amounts a maker's bulletin has added to 270 mL with a new part: drier 105 mL, evaporator 90, condenser 30, so 0.39,
 * 0.33 and 0.11; taken down by a quarter here, rounded, since those are what to add, not what was in it [guess]. A line holds
 * next to none [guess]. The compressor takes what stands in it, and has no share.
 */
const SHARES: Readonly<Record<string, number>> = {
  drier: 0.3,
  accumulator: 0.3,
  evaporator: 0.25,
  condenser: 0.1,
};
const LINE_SHARE = 0.02;

export function oilInPart(part: string, kind: 'part' | 'line' | 'port' | 'joint'): number {
  if (kind === 'part') return SHARES[part] ?? 0;
  return kind === 'line' ? LINE_SHARE : 0;
}
