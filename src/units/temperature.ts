/** Temperature units. 0 °C = 273.15 K and 1 °F = 5/9 K, both exact (BIPM, The International System of Units, 9th ed.). */
export const CELSIUS_ZERO_K = 273.15;

export function kelvinFromCelsius(celsius: number): number {
  return celsius + CELSIUS_ZERO_K;
}

export function celsiusFromKelvin(temperatureK: number): number {
  return temperatureK - CELSIUS_ZERO_K;
}

export function kelvinFromFahrenheit(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9 + CELSIUS_ZERO_K;
}

export function fahrenheitFromKelvin(temperatureK: number): number {
  return ((temperatureK - CELSIUS_ZERO_K) * 9) / 5 + 32;
}
