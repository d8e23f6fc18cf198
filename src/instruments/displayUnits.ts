/**
 * The units a person may choose, and numbers written in them. A reading is rounded to what its instrument resolves and
 * never finer than its scale can be read. Units never reach the core: a score cannot depend on them. Pressures here are
 * gauge pressures unless a name says absolute.
 */
import { DISPLAY_UNITS, formatNumber, valueInUnit } from '../units/format';
import {
  inchesOfVacuumFromGaugePa,
  PA_PER_BAR,
  PA_PER_INCH_OF_MERCURY,
  PA_PER_KPA,
  PA_PER_MICRON,
  PA_PER_PSI,
  STANDARD_ATMOSPHERE_PA,
} from '../units/pressure';
import { word } from '../words/words';

export type PressureUnit = 'psi' | 'kPa' | 'bar';
export type TemperatureUnit = 'degC' | 'degF';
export type MassUnit = 'g' | 'oz';

export interface DisplayUnits {
  readonly pressure: PressureUnit;
  readonly temperature: TemperatureUnit;
  readonly mass: MassUnit;
}

export const paPerUnit: Readonly<Record<PressureUnit, number>> = {
  psi: PA_PER_PSI,
  kPa: PA_PER_KPA,
  bar: PA_PER_BAR,
};
export const ATMOSPHERE_PA = STANDARD_ATMOSPHERE_PA;

/** A number with a fixed count of decimals, thousands separated, true minus, no minus zero. */
export function plainNumber(value: number, decimals = 0): string {
  return formatNumber(value, 10 ** -decimals);
}

export interface Written {
  readonly number: string;
  readonly unit: string;
}

/** A reading that is words has no unit. */
export const inWords = ({ number, unit }: Written): string => (unit === '' ? number : `${number} ${unit}`);

/** What each dial can be read to, in its unit. */
const DIAL_STEP = { low: { psi: 1, kPa: 5, bar: 0.1 }, high: { psi: 1, kPa: 10, bar: 0.1 } } as const;

/** A gauge pressure as its dial is read; below zero in psi it is told in inches of mercury, on either side. */
export function writePressure(gaugePressurePa: number, unit: PressureUnit, face: 'low' | 'high'): Written {
  if (unit === 'psi' && gaugePressurePa < -PA_PER_INCH_OF_MERCURY / 2) {
    return {
      number: plainNumber(inchesOfVacuumFromGaugePa(gaugePressurePa)),
      unit: `${DISPLAY_UNITS.inHg.symbol} vac`,
    };
  }
  return {
    number: formatNumber(valueInUnit(gaugePressurePa, unit), DIAL_STEP[face][unit]),
    unit,
  };
}

/** Where the range of a vacuum gauge ends, absolute; what it shows there is no reading. */
const VACUUM_END_PA = 25_000 * PA_PER_MICRON;

/** A vacuum gauge in microns of mercury, or in pascals where pressures are metric; words at the end of its range. */
export function writeVacuum(absolutePressurePa: number, unit: PressureUnit): Written {
  if (absolutePressurePa >= VACUUM_END_PA - 1) return { number: word('instrument.overRange'), unit: '' };
  const { micron } = DISPLAY_UNITS;
  if (unit === 'psi')
    return { number: plainNumber(valueInUnit(absolutePressurePa, 'micron')), unit: micron.symbol };
  return { number: plainNumber(absolutePressurePa), unit: 'Pa' };
}

export function writeTemperature(temperatureK: number, unit: TemperatureUnit, decimals = 0): Written {
  return { number: plainNumber(valueInUnit(temperatureK, unit), decimals), unit: DISPLAY_UNITS[unit].symbol };
}

export function writeMass(massKg: number, unit: MassUnit): Written {
  return { number: plainNumber(valueInUnit(massKg, unit), unit === 'g' ? 0 : 1), unit };
}

/** Job time as minutes and seconds, both with two figures. */
export function writeClock(seconds: number): string {
  const whole = Math.floor(seconds + 1e-9);
  return `${String(Math.floor(whole / 60)).padStart(2, '0')}:${String(whole % 60).padStart(2, '0')}`;
}
