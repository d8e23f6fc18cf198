import { describe, expect, test } from 'vitest';
import { saturationOf } from '../../src/app/saturationOf';
import { qualityAt, saturationPressurePa, saturationTemperatureK } from '../../src/instruments/saturation';
import { saturationMarks } from '../../src/instruments/saturationMarks';
import { refrigerant } from '../../src/refrigerant/fluids';

const line = saturationOf('R-134a');
const fluid = refrigerant('R-134a');

describe('the saturation line of a picture', () => {
  test('agrees with the tables it was sampled from, to a tenth of a kelvin', () => {
    for (const pressurePa of [101_325, 290_000, 770_000, 1_700_000, 3_200_000]) {
      expect(saturationTemperatureK(line, pressurePa)).toBeCloseTo(
        fluid.saturationTemperatureK(pressurePa),
        1,
      );
    }
    expect(saturationPressurePa(line, 300.4) / fluid.saturationPressurePa(300.4)).toBeCloseTo(1, 3);
  });

  test('knows nothing outside itself', () => {
    expect(saturationTemperatureK(line, 10)).toBeNaN();
    expect(saturationPressurePa(line, 500)).toBeNaN();
  });

  test('tells quality from pressure and enthalpy', () => {
    const isobar = fluid.isobar();
    isobar.setPressurePa(400_000);
    const { liquidEnthalpyJPerKg: liquid, vapourEnthalpyJPerKg: vapour } = isobar;
    expect(qualityAt(line, 400_000, liquid)).toBeCloseTo(0, 2);
    expect(qualityAt(line, 400_000, 0.7 * liquid + 0.3 * vapour)).toBeCloseTo(0.3, 2);
    expect(qualityAt(line, 400_000, vapour + 20_000)).toBeGreaterThan(1);
  });
});

describe('the inner scale of a face', () => {
  test('keeps 0 °C with its star on the low face, and numerals apart', () => {
    const marks = saturationMarks('low', 'degC', line);
    expect(marks.find(({ freezing }) => freezing)?.numeral).toBe('0');
    const angles = marks
      .flatMap(({ numeral, angleDeg }) => (numeral === null ? [] : [angleDeg]))
      .sort((a, b) => a - b);
    for (let i = 1; i < angles.length; i++) expect(angles[i] - angles[i - 1]).toBeGreaterThan(15);
  });

  test('is never evenly spaced: ten kelvin take more room the warmer it is', () => {
    const round = saturationMarks('high', 'degC', line).filter(({ kind }) => kind === 'round');
    expect(round[4].angleDeg - round[3].angleDeg).toBeLessThan(round[7].angleDeg - round[6].angleDeg);
  });
});
