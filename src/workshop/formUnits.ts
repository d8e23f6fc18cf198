/** Numbers of the form in the reader's own units. The text has them in °C and g, which is what a wish carries. */
import type { DisplayUnits } from '../instruments/displayUnits';
import { DISPLAY_UNITS } from '../units/format';
import { KG_PER_GRAM, KG_PER_OUNCE } from '../units/mass';
import {
  celsiusFromKelvin,
  fahrenheitFromKelvin,
  kelvinFromCelsius,
  kelvinFromFahrenheit,
} from '../units/temperature';

export interface FormUnit {
  readonly symbol: string;
  readonly step: number;
  /** As the box shows it. */
  show(value: number): number;
  /** What somebody who types this means. */
  read(shown: number): number;
}

const G_PER_OUNCE = KG_PER_OUNCE / KG_PER_GRAM;
const tenths = (value: number): number => Math.round(value * 10) / 10;
const hundredths = (value: number): number => Math.round(value * 100) / 100;

export const temperatureUnit = ({ temperature }: DisplayUnits): FormUnit => ({
  symbol: DISPLAY_UNITS[temperature].symbol,
  ...(temperature === 'degC'
    ? { step: 0.5, show: tenths, read: tenths }
    : {
        step: 1,
        show: (celsius) => tenths(fahrenheitFromKelvin(kelvinFromCelsius(celsius))),
        read: (fahrenheit) => hundredths(celsiusFromKelvin(kelvinFromFahrenheit(fahrenheit))),
      }),
});

export const massUnit = ({ mass }: DisplayUnits): FormUnit => ({
  symbol: mass,
  ...(mass === 'g'
    ? { step: 10, show: tenths, read: tenths }
    : {
        step: 0.5,
        show: (grams) => tenths(grams / G_PER_OUNCE),
        read: (ounces) => tenths(ounces * G_PER_OUNCE),
      }),
});
