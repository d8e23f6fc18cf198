/**
 * A value written in a condition -> the number the signal is compared with: `on`/`off` for a switch, a bare number for
 * a ratio, a count or rpm, and text with a unit for everything else. Throws `RangeError` that says what would be right.
 */
import { quantityIn } from '../quantityText';

const BARE = new Set(['1', 'rpm', '1/min']);

export function valueInUnitOf(unit: string, given: string | number): number {
  if (unit === 'bool') {
    if (given === 'on') return 1;
    if (given === 'off') return 0;
    throw new RangeError(`"${given}" is not on or off`);
  }
  if (BARE.has(unit)) {
    if (typeof given === 'number') return given;
    throw new RangeError(`"${given}" has to be a bare number`);
  }
  if (typeof given === 'number') throw new RangeError(`${given} needs a unit, as in "${given} ${unit}"`);
  return quantityIn(unit, given);
}
