/** Quantities as people write them. Factors: NIST Special Publication 811 (2008), appendix B.8. */
import { describe, expect, it } from 'vitest';
import { isQuantityKind, parseQuantity, QuantityError } from '../../src/units/quantity';
import { KINDS, type QuantityKind } from '../../src/units/unitTable';

describe('quantities', () => {
  const rows: readonly (readonly [string, QuantityKind, number])[] = [
    ['620 g', 'mass', 0.62],
    ['12 oz', 'mass', 0.3401942775],
    ['1 lb', 'mass', 0.45359237],
    ['35 degC', 'temperature', 308.15],
    ['-10 °C', 'temperature', 263.15],
    ['−10 °C', 'temperature', 263.15],
    ['212 degF', 'temperature', 373.15],
    ['5 K', 'temperatureDifference', 5],
    ['85 psi', 'gaugePressure', 586054.3699],
    ['-20 inHg', 'gaugePressure', -67727.78],
    ['1.2 bar abs', 'absolutePressure', 120000],
    ['500 micron abs', 'absolutePressure', 66.66118421052632],
    ['30 s', 'time', 30],
    ['5 min', 'time', 300],
    ['50 %', 'ratio', 0.5],
    ['50%', 'ratio', 0.5],
    ['0.5 mm', 'length', 0.0005],
    ['3/8 in', 'length', Number.NaN],
    ['1500 rpm', 'rotation', 25],
    ['36 km/h', 'speed', 10],
    ['90 deg', 'angle', 1.5707963267948966],
    ['1e2 W', 'power', 100],
    ['.5 L', 'volume', 0.0005],
    ['360 m3/h', 'volumeFlow', 0.1],
  ];

  it.each(rows)('reads %s as %s', (text, kind, value) => {
    if (Number.isNaN(value)) expect(() => parseQuantity(text, kind)).toThrow(QuantityError);
    else expect(parseQuantity(text, kind)).toBeCloseTo(value, Math.abs(value) > 1000 ? 2 : 8);
  });

  const wrong: readonly (readonly [string, QuantityKind, string])[] = [
    ['620', 'mass', 'unitMissing'],
    ['620 grams', 'mass', 'unitUnknown'],
    ['g', 'mass', 'notAQuantity'],
    ['', 'mass', 'notAQuantity'],
    ['1e999 g', 'mass', 'notAQuantity'],
    ['85 psi', 'absolutePressure', 'absoluteWanted'],
    ['85 psi abs', 'gaugePressure', 'gaugeWanted'],
    ['35 degC', 'temperatureDifference', 'unitUnknown'],
    ['1,5 g', 'mass', 'unitUnknown'],
    ['5 constructor', 'time', 'unitUnknown'],
  ];

  it.each(wrong)('refuses %j as %s: %s', (text, kind, fault) => {
    const attempt = (): number => parseQuantity(text, kind);
    expect(attempt).toThrow(QuantityError);
    try {
      attempt();
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error;
      expect(error.fault).toBe(fault);
      expect(error.allowedUnits).toEqual(Object.keys(KINDS[kind].units));
      expect(error.message).toContain(error.allowedUnits[0]);
    }
  });

  it('knows its kinds', () => {
    expect(isQuantityKind('gaugePressure')).toBe(true);
    expect(isQuantityKind('toString')).toBe(false);
  });
});
