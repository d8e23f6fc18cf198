/** What a severity stands for, as somebody in the trade would say it, in the units that were chosen. */
import { expect, it } from 'vitest';
import { figureOf } from '../../src/workshop/reader/figureOf';

it('says what a severity stands for in the units of whoever reads it', () => {
  const told = (units: Parameters<typeof figureOf>[3]): string[] =>
    [
      figureOf('airMass', 'kg', 0.02, units),
      figureOf('seepRate', 'kg/s', 1e-9, units),
      figureOf('reedLeakFlow', 'kg/s', 0.002, units),
      figureOf('switchTooHigh', 'Pa', 250_000, units),
      figureOf('holeDiameter', 'm', 0.0003, units),
    ].map((text) => text.replaceAll('\u00a0', ' '));
  expect(told({ pressure: 'kPa', temperature: 'degC', mass: 'g' })).toEqual([
    '20 g',
    '32 g a year',
    '2.0 g/s',
    '250 kPa',
    '0.30 mm',
  ]);
  expect(told({ pressure: 'psi', temperature: 'degF', mass: 'oz' })).toEqual([
    '0.7 oz',
    '1.1 oz a year',
    '0.07 oz/s',
    '36 psi',
    '0.30 mm',
  ]);
});
