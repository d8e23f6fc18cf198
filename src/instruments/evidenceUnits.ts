/** Numbers of an evidence sentence in the reader's own units; what has none of ours is written as the core would. */

import { type WriteQuantity, writeMetric } from '../session/writeQuantity';
import { type DisplayUnits, inWords, writeMass, writePressure, writeTemperature } from './displayUnits';

const DIFFERENCE = /superheat|subcooling/i;

export function writerOf(units: DisplayUnits): WriteQuantity {
  return (quantity) => {
    const { source, value, unit } = quantity;
    if (unit === 'Pa' && !/absolutePressure/.test(source))
      return inWords(writePressure(value, units.pressure, /high/i.test(source) ? 'high' : 'low'));
    if (unit === 'kg') return inWords(writeMass(value, units.mass));
    if (unit === 'K' && !DIFFERENCE.test(source))
      return inWords(writeTemperature(value, units.temperature, 1));
    return writeMetric(quantity);
  };
}
