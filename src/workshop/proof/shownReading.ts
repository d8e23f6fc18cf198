/** A reading of a test as the reader writes it: pressures by their dial, temperatures, masses, shares, yes and no. */
import {
  type DisplayUnits,
  inWords,
  plainNumber,
  writeMass,
  writePressure,
  writeTemperature,
} from '../../instruments/displayUnits';
import type { TestOf } from '../../prover/apartTable';
import { word } from '../../words/words';

const PERCENT = 100;

/** Pressures in Pa, gauge; temperatures in K. */
export function shownReading({ id, unit }: TestOf, value: number | null, units: DisplayUnits): string {
  if (value === null || !Number.isFinite(value)) return '–';
  switch (unit) {
    case 'Pa':
      return inWords(writePressure(value, units.pressure, id.startsWith('high') ? 'high' : 'low'));
    case 'K':
      return inWords(writeTemperature(value, units.temperature));
    case 'kg':
      return inWords(writeMass(value, units.mass));
    case 'bool':
      return value > 0 ? word('workshopCar.suspects.yes') : word('workshopCar.suspects.no');
    case '1':
      return `${plainNumber(PERCENT * value)} %`;
    default:
      return plainNumber(value, Number.isInteger(value) ? 0 : 1);
  }
}
