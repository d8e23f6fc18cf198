/** A reading of a test as the reader writes it: pressures by their dial, temperatures, masses, shares, what is looked at. */
import {
  type DisplayUnits,
  inWords,
  plainNumber,
  writeMass,
  writePressure,
  writeTemperature,
} from '../../instruments/displayUnits';
import type { TestOf } from '../../prover/apartTable';

const PERCENT = 100;

/** Pressures in Pa, gauge; temperatures in K; `look` names what is looked at. */
export function shownReading(
  { id, unit }: TestOf,
  value: number | null,
  units: DisplayUnits,
  look: (value: number) => string,
): string {
  if (value === null || !Number.isFinite(value)) return '–';
  switch (unit) {
    case 'Pa':
      return inWords(writePressure(value, units.pressure, id.startsWith('high') ? 'high' : 'low'));
    case 'K':
      return inWords(writeTemperature(value, units.temperature));
    case 'kg':
      return inWords(writeMass(value, units.mass));
    case 'look':
      return look(value);
    case '1':
      return `${plainNumber(PERCENT * value)} %`;
    default:
      return plainNumber(value, Number.isInteger(value) ? 0 : 1);
  }
}
