/**
 * A value written in a condition -> the number the signal is compared with: `on`/`off` for a switch, a bare number for
 * a ratio, a count or rpm, and text with a unit for everything else. Throws `RangeError` that says what would be right.
 */
import type { SignalSpec } from '../../plant/signalTypes';
import { parseQuantity } from '../../units/quantity';
import type { QuantityKind } from '../../units/unitTable';

const BARE = new Set(['1', 'rpm', '1/min']);
const KINDS: Readonly<Record<string, QuantityKind>> = {
  kg: 'mass',
  m3: 'volume',
  s: 'time',
  W: 'power',
  'kg/s': 'massFlow',
};

export function valueFor(signal: Pick<SignalSpec, 'id' | 'unit'>, given: string | number): number {
  const { unit } = signal;
  if (unit === 'bool') {
    if (given === 'on') return 1;
    if (given === 'off') return 0;
    throw new RangeError(`"${given}" is not on or off`);
  }
  if (BARE.has(unit)) {
    if (typeof given === 'number') return given;
    throw new RangeError(`"${given}" has to be a bare number`);
  }
  const kind = kindOf(signal);
  if (typeof given === 'number') throw new RangeError(`${given} needs a unit; it is a ${kind}`);
  return parseQuantity(given, kind);
}

/** Gauge and absolute pressure, and a temperature and a difference, share a unit; the name tells them apart. */
export function kindOf({ id, unit }: Pick<SignalSpec, 'id' | 'unit'>): QuantityKind {
  if (unit === 'Pa') return /gaugePressure/i.test(id) ? 'gaugePressure' : 'absolutePressure';
  if (unit === 'K') return /superheat|subcooling/i.test(id) ? 'temperatureDifference' : 'temperature';
  const kind = KINDS[unit];
  if (kind === undefined) throw new RangeError(`a value in ${unit} cannot be compared`);
  return kind;
}
