/**
 * Writes numbers and quantities for people: rounded to the instrument's resolution, true minus, marks given by the
 * language (no locale functions, so the same text in every engine). Unit symbols are international and not translated.
 */
import { KG_PER_GRAM, KG_PER_OUNCE } from './mass';
import { PA_PER_BAR, PA_PER_INCH_OF_MERCURY, PA_PER_KPA, PA_PER_MICRON, PA_PER_PSI } from './pressure';
import { CELSIUS_ZERO_K } from './temperature';
import type { Unit } from './unitTable';

export interface NumberMarks {
  readonly decimal: string;
  /** Between thousands; empty for none. */
  readonly thousands: string;
  /** Whole numbers of fewer figures stand without it. */
  readonly leastGrouped: number;
}

export const PLAIN_MARKS: NumberMarks = { decimal: '.', thousands: '', leastGrouped: 4 };
export const ENGLISH_MARKS: NumberMarks = { decimal: '.', thousands: ',', leastGrouped: 4 };
/** A narrow space that does not break. Four figures stand together (orthography of the Spanish academies, 2010). */
export const SPANISH_MARKS: NumberMarks = { decimal: ',', thousands: '\u202f', leastGrouped: 5 };
const TRUE_MINUS = '−';

let shown = ENGLISH_MARKS;

/** From now on numbers are written so where nothing else is asked for. */
export function showMarks(marks: NumberMarks): void {
  shown = marks;
}

export const shownMarks = (): NumberMarks => shown;
const MOST_DECIMALS = 9;

/** Units a value may be shown in; SI times `factor`, less `shift`. */
export const DISPLAY_UNITS = {
  psi: { factor: PA_PER_PSI, symbol: 'psi' },
  kPa: { factor: PA_PER_KPA, symbol: 'kPa' },
  bar: { factor: PA_PER_BAR, symbol: 'bar' },
  inHg: { factor: PA_PER_INCH_OF_MERCURY, symbol: 'inHg' },
  micron: { factor: PA_PER_MICRON, symbol: 'micron' },
  degC: { factor: 1, shift: CELSIUS_ZERO_K, symbol: '°C' },
  degF: { factor: 5 / 9, shift: CELSIUS_ZERO_K * 1.8 - 32, symbol: '°F' },
  K: { factor: 1, symbol: 'K' },
  g: { factor: KG_PER_GRAM, symbol: 'g' },
  kg: { factor: 1, symbol: 'kg' },
  oz: { factor: KG_PER_OUNCE, symbol: 'oz' },
  mL: { factor: 1e-6, symbol: 'mL' },
  rpm: { factor: 1 / 60, symbol: 'rpm' },
  percent: { factor: 0.01, symbol: '%' },
  s: { factor: 1, symbol: 's' },
  min: { factor: 60, symbol: 'min' },
  W: { factor: 1, symbol: 'W' },
  kW: { factor: 1000, symbol: 'kW' },
} as const satisfies Readonly<Record<string, Unit & { readonly symbol: string }>>;

export type DisplayUnit = keyof typeof DISPLAY_UNITS;

/** The number an SI value has in a display unit. */
export function valueInUnit(valueSi: number, unit: DisplayUnit): number {
  const entry: Unit = DISPLAY_UNITS[unit];
  return valueSi / entry.factor - (entry.shift ?? 0);
}

/** "46 psi", "−1 °C": value, space, unit, rounded to `resolution` (in that unit). */
export function formatQuantity(
  valueSi: number,
  unit: DisplayUnit,
  resolution: number,
  marks: NumberMarks = shown,
): string {
  return `${formatNumber(valueInUnit(valueSi, unit), resolution, marks)} ${DISPLAY_UNITS[unit].symbol}`;
}

/** A number rounded to a multiple of `resolution`, with as many decimals as that needs. An en dash when not finite. */
export function formatNumber(value: number, resolution: number, marks: NumberMarks = shown): string {
  if (!Number.isFinite(value)) return '–';
  const rounded = Math.round(value / resolution) * resolution;
  const plain = Math.abs(rounded).toFixed(decimalsOf(resolution));
  const [whole, fraction] = plain.split('.');
  const grouped =
    marks.thousands === '' || whole.length < marks.leastGrouped
      ? whole
      : groupThousands(whole, marks.thousands);
  const digits = fraction === undefined ? grouped : grouped + marks.decimal + fraction;
  const isZero = Number(plain) === 0;
  return rounded < 0 && !isZero ? TRUE_MINUS + digits : digits;
}

function groupThousands(whole: string, mark: string): string {
  let out = '';
  for (let i = 0; i < whole.length; i++) {
    if (i > 0 && (whole.length - i) % 3 === 0) out += mark;
    out += whole[i];
  }
  return out;
}

function decimalsOf(resolution: number): number {
  let decimals = 0;
  let scaled = resolution;
  while (decimals < MOST_DECIMALS && Math.abs(scaled - Math.round(scaled)) > 1e-6 * scaled) {
    scaled *= 10;
    decimals++;
  }
  return decimals;
}
