import { describe, expect, test } from 'vitest';
import { saturationOf } from '../../src/app/saturationOf';
import { micronGaugeSpec } from '../../src/equipment/instruments';
import { inWords, writePressure, writeVacuum } from '../../src/instruments/displayUnits';
import { needleAngleDeg, readGauge } from '../../src/instruments/gaugeReading';
import { PA_PER_MICRON } from '../../src/units/pressure';

const units = { pressure: 'psi', temperature: 'degC', mass: 'g' } as const;
const line = saturationOf('R-134a');
const PSI = 6894.757;

describe('what a gauge says', () => {
  test('a reading, the same in the other unit, and what it means in degrees', () => {
    expect(readGauge('low', 27 * PSI, units, line)).toMatchObject({
      state: 'live',
      number: '27',
      unit: 'psi',
      meaning: '185 kPa · boils at −1 °C',
    });
    expect(readGauge('high', 176 * PSI, units, line).meaning).toBe('1,210 kPa · condenses at 50 °C');
  });

  test('the spoken form has every word that stands under the face', () => {
    const reading = readGauge('low', 46 * PSI, units, line);
    expect(reading.spoken).toBe(`46 psi, ${reading.meaning}`);
  });

  test('nothing where nothing is connected, and no needle', () => {
    const reading = readGauge('low', Number.NaN, units, line);
    expect(reading).toMatchObject({ state: 'off', number: '–', meaning: 'Hose not coupled to a port' });
    expect(needleAngleDeg('low', reading.gaugePressurePa)).toBeNull();
  });

  test('inches of vacuum below zero in psi, kilopascals otherwise', () => {
    expect(readGauge('low', -95_000, units, line)).toMatchObject({
      state: 'vacuum',
      number: '28',
      unit: 'inHg vac',
    });
    expect(readGauge('low', -95_000, { ...units, pressure: 'kPa' }, line).number).toBe('−95');
  });

  test('a needle on its stop says so instead of a number', () => {
    expect(readGauge('high', 3_600_000, units, line)).toMatchObject({
      state: 'over',
      number: '>500',
      meaning: 'on its stop: close and look',
    });
    expect(readGauge('low', 1_000_000, units, line).number).toBe('>140');
  });

  test('a high gauge at the foot of its scale is below it: no boiling point, and none made up in a vacuum', () => {
    for (const pa of [0, -70_000])
      expect(readGauge('high', pa, units, line)).toMatchObject({
        state: 'under',
        number: '≤0',
        meaning: 'below scale',
        other: '',
      });
    expect(readGauge('high', 0, units, line, 'shut').state).toBe('hose-only');
    expect(readGauge('high', 5_000, units, line).meaning).toContain('condenses');
  });

  test('a pressure under the atmosphere is written alike on both sides', () => {
    expect(writePressure(-100_000, 'psi', 'high')).toEqual(writePressure(-100_000, 'psi', 'low'));
    expect(writePressure(-100_000, 'kPa', 'high')).toEqual(writePressure(-100_000, 'kPa', 'low'));
  });

  test('a vacuum gauge at the end of its range says so instead of a number', () => {
    expect(inWords(writeVacuum(micronGaugeSpec.maximum, 'psi'))).toBe('over range');
    expect(inWords(writeVacuum(micronGaugeSpec.maximum, 'kPa'))).toBe('over range');
    expect(inWords(writeVacuum(500 * PA_PER_MICRON, 'psi'))).toBe('500 micron');
  });

  test('a loose hose has no boiling point, and says so when its needle stands beside zero', () => {
    expect(readGauge('low', -6_000, units, line, 'loose')).toMatchObject({
      state: 'loose',
      meaning: 'off zero, hose not on the car',
    });
    expect(readGauge('low', 0, units, line, 'loose').meaning).toBe('hose not on the car');
    expect(readGauge('low', 27 * PSI, units, line, 'loose').meaning).toBe('hose not on the car');
  });

  test('a shut coupler makes it the pressure of the hose', () => {
    expect(readGauge('low', 27 * PSI, units, line, 'shut')).toMatchObject({
      state: 'hose-only',
      meaning: 'valve shut: hose only',
    });
  });

  test('is never finer than the dial can be read', () => {
    expect(readGauge('low', 187_200, { ...units, pressure: 'kPa' }, line).number).toBe('185');
    expect(readGauge('high', 1_213_000, { ...units, pressure: 'kPa' }, line).number).toBe('1,210');
    expect(readGauge('high', 1_213_000, { ...units, pressure: 'bar' }, line).number).toBe('12.1');
  });
});
