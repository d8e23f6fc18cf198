/** The quantity that a severity stands for, as a person in the trade would say it. */
import { formatNumber } from '../../units/format';
import { KG_PER_GRAM } from '../../units/mass';
import { PA_PER_KPA } from '../../units/pressure';
import { word } from '../../words/words';

const SECONDS_PER_YEAR = 31_557_600;
const M_PER_MM = 0.001;
/** A number and its unit stay on one line. */
const APART = '\u00a0';
/** Shares over two are said as so many times. */
const MOST_IN_PERCENT = 2;

/** `unit` is SI, `1` for a share. A seep is told by the year, any other flow by the second. */
export function figureOf(name: string, unit: string, value: number): string {
  switch (unit) {
    case 'kg':
      return `${formatNumber(value / KG_PER_GRAM, 1)}${APART}g`;
    case 'kg/s':
      return name === 'seepRate'
        ? word('workshop.form.gramsAYear', {
            grams: formatNumber((value * SECONDS_PER_YEAR) / KG_PER_GRAM, 1),
          })
        : `${formatNumber(value / KG_PER_GRAM, 0.1)}${APART}g/s`;
    case 'm':
      return `${formatNumber(value / M_PER_MM, 0.01)}${APART}mm`;
    case 'Pa':
      return `${formatNumber(value / PA_PER_KPA, 1)}${APART}kPa`;
    case 'K':
      return `${formatNumber(value, 0.1)}${APART}K`;
    default:
      return value > MOST_IN_PERCENT
        ? word('workshop.form.times', { times: formatNumber(value, 0.1) })
        : `${formatNumber(value * 100, 1)}${APART}%`;
  }
}
