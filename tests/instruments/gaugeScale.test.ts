import { describe, expect, test } from 'vitest';
import { gaugeAngleDeg, scaleMarks, vacuumMarks } from '../../src/instruments/gaugeScale';

describe('the needle', () => {
  test.each([
    ['low', 0, 186],
    ['low', 500_000, 288],
    ['low', 1_000_000, 390],
    ['low', -100_000, 150],
    ['high', 0, 150],
    ['high', 1_750_000, 270],
    ['high', 3_500_000, 390],
  ] as const)('stands on the %s face at %i Pa at %i degrees', (face, pressurePa, angleDeg) => {
    expect(gaugeAngleDeg(face, pressurePa)).toBeCloseTo(angleDeg, 6);
  });

  test('rests four degrees past the last mark beyond the scale, and on the first below it', () => {
    expect(gaugeAngleDeg('low', 2_000_000)).toBe(394);
    expect(gaugeAngleDeg('high', 9_000_000)).toBe(394);
    expect(gaugeAngleDeg('high', -50_000)).toBe(150);
    expect(gaugeAngleDeg('low', -300_000)).toBe(150);
  });

  test('never goes back when the pressure rises', () => {
    for (const face of ['low', 'high'] as const) {
      let last = Number.NEGATIVE_INFINITY;
      for (let pressurePa = -120_000; pressurePa <= 4_000_000; pressurePa += 1000) {
        const angle = gaugeAngleDeg(face, pressurePa);
        expect(angle).toBeGreaterThanOrEqual(last);
        last = angle;
      }
    }
  });
});

describe('the scale', () => {
  test('keeps its marks where the pressure is, whatever the unit', () => {
    const at = (face: 'low' | 'high', unit: 'psi' | 'kPa' | 'bar', numeral: string) =>
      scaleMarks(face, unit).find((mark) => mark.numeral === numeral)?.angleDeg;
    expect(at('low', 'kPa', '400')).toBeCloseTo(at('low', 'bar', '4') ?? 0, 6);
    expect(at('low', 'psi', '100')).toBeCloseTo(gaugeAngleDeg('low', 689_475.7), 3);
    expect(at('high', 'psi', '500')).toBeCloseTo(gaugeAngleDeg('high', 3_447_378.6), 3);
  });

  test('has round numerals, in psi from 0 to 140 and from 0 to 500', () => {
    const numerals = (face: 'low' | 'high') =>
      scaleMarks(face, 'psi').flatMap(({ numeral }) => (numeral === null ? [] : [numeral]));
    expect(numerals('low')).toEqual(['0', '20', '40', '60', '80', '100', '120', '140']);
    expect(numerals('high')).toEqual(['0', '100', '200', '300', '400', '500']);
  });

  test('puts 30 inches of mercury at the start of the vacuum part', () => {
    const [deepest] = vacuumMarks('psi');
    expect(deepest).toMatchObject({ numeral: '30', angleDeg: 150 });
  });
});
