/** Numbers of signals and measures for a reader, with their unit. Whoever has a reader's own units passes another one. */
import { tellFigures } from '../units/figuresInText';
import { formatNumber, formatQuantity } from '../units/format';

/** `source` is the signal or measure: its name tells a temperature from a difference. */
export type WriteQuantity = (quantity: {
  readonly source: string;
  readonly value: number;
  readonly unit: string;
}) => string;

/** kPa (gauge where the name says so), micron for a vacuum gauge, °C, K, g, mL, %, rpm, kW. */
export const writeMetric: WriteQuantity = ({ source, value, unit }) => {
  if (unit === 'Pa abs' || (unit === 'Pa' && /absolutePressure/.test(source)))
    return formatQuantity(value, 'micron', 1);
  if (unit === 'share' || (unit === '1' && /Share$/.test(source)))
    return formatQuantity(value, 'percent', 0.1);
  if (unit === 'm3') return formatQuantity(value, 'mL', 1);
  if (unit === 'Pa') return formatQuantity(value, 'kPa', 1);
  if (unit === 'kg') return formatQuantity(value, 'g', 1);
  if (unit === 'K') return formatQuantity(value, /superheat|subcooling/i.test(source) ? 'K' : 'degC', 0.1);
  if (unit === 'rpm') return formatQuantity(value / 60, 'rpm', 10);
  if (unit === 'W') return formatQuantity(value, 'kW', 0.1);
  return formatNumber(value, 1);
};

const SI_UNIT = { gaugePressure: 'Pa', absolutePressure: 'Pa abs', temperature: 'K', mass: 'kg' } as const;

/** The figures of a text in the same units. */
export const writeFigures = (text: string): string =>
  tellFigures(text, ({ kind, valueSi }) => {
    if (kind === 'temperature') return formatQuantity(valueSi, 'degC', 1);
    return writeMetric({ source: kind, value: valueSi, unit: SI_UNIT[kind] });
  });
