/**
 * What each side of a car that has stood holds: how the refrigerant lies follows from `restSplit`; air stands by the
 * volume of vapour, a foreign fluid in the same share on both sides, oil where running left it, water where a desiccant
 * has taken it up, and what that cannot hold by volume. The shares of the oil are [guess].
 */
import type { Contents } from '../networkTypes';
import type { CarStart } from './car';
import type { Side } from './lowSide';

/** Of all the oil: in the compressor, and on the high side; the rest lies on the low side's walls. */
const IN_COMPRESSOR = 0.6;
export const OIL_ON_HIGH = 0.07;

/** How one side stands: kg of refrigerant, what oil holds included, and volume and gas of the side over the whole loop's. */
interface AtRest {
  readonly kg: number;
  readonly volumeShare: number;
  readonly gasShare: number;
}

/** kg of oil in the loop. */
export function oilInLoopKg(belongsKg: number, start: CarStart): number {
  return Math.max(0, belongsKg + (start.extraOilKg ?? 0));
}

export function fillSides(
  start: CarStart,
  oilKg: number,
  high: AtRest,
  low: AtRest,
  sides: { readonly high: Side; readonly low: Side },
): { readonly high: Contents; readonly low: Contents } {
  const water = start.waterKg ?? 0;
  const taken = { high: desiccantOf(sides.high), low: desiccantOf(sides.low) };
  const held = Math.min(1, water / Math.max(1e-30, taken.high + taken.low));
  const free = Math.max(0, water - taken.high - taken.low);
  const fill = (at: AtRest, desiccantKg: number): Contents => {
    const foreign = at.kg * (start.foreign?.share ?? 0);
    return {
      temperatureK: start.ambientK,
      refrigerantKg: at.kg - foreign,
      foreignKg: foreign,
      airKg: (start.airKg ?? 0) * at.gasShare,
      waterKg: held * desiccantKg + free * at.volumeShare,
    };
  };
  return {
    high: { ...fill(high, taken.high), oilKg: OIL_ON_HIGH * oilKg },
    low: {
      ...fill(low, taken.low),
      oilKg: (1 - OIL_ON_HIGH) * oilKg,
      sumpKg: IN_COMPRESSOR * oilKg,
    },
  };
}

function desiccantOf({ parts }: Side): number {
  return parts.reduce((sum, { desiccant }) => sum + (desiccant ?? 0), 0);
}
