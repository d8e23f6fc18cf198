import { describe, expect, it } from 'vitest';
import { decimalPoint } from '../../src/units/decimalPoint';
import {
  type DisplayUnit,
  ENGLISH_MARKS,
  formatNumber,
  formatQuantity,
  PLAIN_MARKS,
  SPANISH_MARKS,
  showMarks,
  valueInUnit,
} from '../../src/units/format';
import { gramsFromKg, ouncesFromKg } from '../../src/units/mass';
import {
  gaugePressurePaFromAbsolute,
  inchesOfVacuumFromGaugePa,
  paFromPsi,
  pressurePaFromGauge,
  psiFromPa,
} from '../../src/units/pressure';
import {
  celsiusFromKelvin,
  fahrenheitFromKelvin,
  kelvinFromCelsius,
  kelvinFromFahrenheit,
} from '../../src/units/temperature';

describe('writing numbers', () => {
  const rows: readonly (readonly [number, number, string])[] = [
    [46.4, 1, '46'],
    [46.5, 5, '45'],
    [-1.04, 0.1, '−1.0'],
    [-0.04, 0.1, '0.0'],
    [1234567, 1, '1,234,567'],
    [999.96, 0.1, '1,000.0'],
    [0.125, 0.25, '0.25'],
    [-3000, 10, '−3,000'],
    [Number.NaN, 1, '–'],
  ];

  it.each(rows)('writes %d to %d as %s', (value, resolution, text) => {
    expect(formatNumber(value, resolution)).toBe(text);
  });

  it('uses the marks it is given', () => {
    expect(formatNumber(1234.5, 0.1, { decimal: ',', thousands: '.', leastGrouped: 4 })).toBe('1.234,5');
    expect(formatNumber(1234.5, 0.1, PLAIN_MARKS)).toBe('1234.5');
  });

  const quantities: readonly (readonly [number, DisplayUnit, number, string])[] = [
    [317158.8, 'psi', 1, '46 psi'],
    [317158.8, 'kPa', 5, '315 kPa'],
    [317158.8, 'bar', 0.1, '3.2 bar'],
    [272.15, 'degC', 1, '−1 °C'],
    [272.15, 'degF', 1, '30 °F'],
    [0.62, 'g', 1, '620 g'],
    [0.62, 'oz', 0.1, '21.9 oz'],
    [0.5, 'percent', 1, '50 %'],
    [25, 'rpm', 10, '1,500 rpm'],
  ];

  it.each(quantities)('writes %d in %s', (value, unit, resolution, text) => {
    expect(formatQuantity(value, unit, resolution)).toBe(text);
  });
});

describe('conversions', () => {
  it('come back', () => {
    expect(celsiusFromKelvin(kelvinFromCelsius(21.5))).toBeCloseTo(21.5, 12);
    expect(fahrenheitFromKelvin(kelvinFromFahrenheit(70))).toBeCloseTo(70, 10);
    expect(psiFromPa(paFromPsi(85))).toBeCloseTo(85, 12);
    expect(gaugePressurePaFromAbsolute(pressurePaFromGauge(2e5))).toBeCloseTo(2e5, 9);
    expect(valueInUnit(kelvinFromFahrenheit(70), 'degF')).toBeCloseTo(70, 10);
  });

  it('meet known values', () => {
    expect(fahrenheitFromKelvin(273.15)).toBeCloseTo(32, 12);
    expect(paFromPsi(1)).toBeCloseTo(6894.757293, 6);
    expect(ouncesFromKg(1)).toBeCloseTo(35.27396195, 8);
    expect(gramsFromKg(0.62)).toBeCloseTo(620, 9);
    // A perfect vacuum at the standard atmosphere is 29.92 inches of mercury.
    expect(inchesOfVacuumFromGaugePa(-101325)).toBeCloseTo(29.92, 2);
  });
});

describe('Spanish marks', () => {
  it('are a decimal comma, and a narrow space from five figures on', () => {
    expect(formatNumber(0.48, 0.01, SPANISH_MARKS)).toBe('0,48');
    expect(formatNumber(1280, 1, SPANISH_MARKS)).toBe('1280');
    expect(formatNumber(310000, 1, SPANISH_MARKS)).toBe('310\u202f000');
    showMarks(SPANISH_MARKS);
    expect(formatQuantity(317158.8, 'bar', 0.1)).toBe('3,2 bar');
    showMarks(ENGLISH_MARKS);
    expect(formatQuantity(317158.8, 'bar', 0.1)).toBe('3.2 bar');
  });

  it('are understood when they are typed, but no thousands as decimals', () => {
    expect(decimalPoint('0,48 kg')).toBe('0.48 kg');
    expect(decimalPoint('1,280 g')).toBe('1,280 g');
    showMarks(SPANISH_MARKS);
    expect(decimalPoint('0,480 kg')).toBe('0.480 kg');
    showMarks(ENGLISH_MARKS);
    expect(decimalPoint('couple charging port-a firewall,fender')).toBe(
      'couple charging port-a firewall,fender',
    );
  });
});
