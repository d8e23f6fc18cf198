/** Figures of a text in the units of the gauges beside it. One that its author wrote in the reader's unit stands as it is. */
import { type Figure, tellFigures } from '../units/figuresInText';
import { DISPLAY_UNITS } from '../units/format';
import {
  type DisplayUnits,
  inWords,
  plainNumber,
  type Written,
  writeMass,
  writePressure,
  writeTemperature,
  writeVacuum,
} from './displayUnits';

export const figuresFor = (text: string, units: DisplayUnits): string =>
  tellFigures(text, (figure) => inWords(inUnits(figure, units)));

function inUnits({ kind, valueSi, number, unit }: Figure, units: DisplayUnits): Written {
  if (kind === 'absolutePressure') return writeVacuum(valueSi, units.pressure);
  const chosen = { gaugePressure: units.pressure, temperature: units.temperature, mass: units.mass }[kind];
  const { symbol } = DISPLAY_UNITS[chosen];
  const decimals = number.split('.')[1]?.length ?? 0;
  if (unit === chosen || unit === symbol)
    return { number: plainNumber(Number(number), decimals), unit: symbol };
  if (kind === 'mass') return writeMass(valueSi, units.mass);
  if (kind === 'temperature') return writeTemperature(valueSi, units.temperature);
  return writePressure(valueSi, units.pressure, 'low');
}
