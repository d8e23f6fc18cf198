/** The quantity that a severity stands for, as a person in the trade would say it, in the reader's units. */
import { type DisplayUnits, inWords, writeMass } from '../../instruments/displayUnits';
import { formatNumber, formatQuantity } from '../../units/format';
import { word } from '../../words/words';

const SECONDS_PER_YEAR = 31_557_600;
const M_PER_MM = 0.001;
/** A number and its unit stay on one line. */
const APART = '\u00a0';
const together = (written: string): string => written.replace(' ', APART);
/** Shares over two are said as so many times. */
const MOST_IN_PERCENT = 2;
/** Finer than a dial: these are differences. */
const PRESSURE_STEP = { psi: 1, kPa: 1, bar: 0.01 } as const;
const FLOW_STEP = { g: 0.1, oz: 0.01 } as const;

/** `unit` is SI, `1` for a share. A seep is told by the year, any other flow by the second. */
export function figureOf(name: string, unit: string, value: number, units: DisplayUnits): string {
  const mass = (kg: number): string => together(inWords(writeMass(kg, units.mass)));
  switch (unit) {
    case 'kg':
      return mass(value);
    case 'kg/s':
      return name === 'seepRate'
        ? word('workshop.form.aYear', { mass: mass(value * SECONDS_PER_YEAR) })
        : `${together(formatQuantity(value, units.mass, FLOW_STEP[units.mass]))}/s`;
    case 'm':
      return `${formatNumber(value / M_PER_MM, 0.01)}${APART}mm`;
    case 'Pa':
      return together(formatQuantity(value, units.pressure, PRESSURE_STEP[units.pressure]));
    case 'K':
      return `${formatNumber(value, 0.1)}${APART}K`;
    default:
      return value > MOST_IN_PERCENT
        ? word('workshop.form.times', { times: formatNumber(value, 0.1) })
        : `${formatNumber(value * 100, 1)}${APART}%`;
  }
}
