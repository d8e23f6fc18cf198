/** How the look-up behaves as a function: continuous, monotone, invertible, finite past its ends, and honest about them. */
import { describe, expect, it } from 'vitest';
import { exp } from '../../src/numerics/exp';
import { keyedUniform } from '../../src/numerics/keyedRandom';
import { ln } from '../../src/numerics/ln';
import { REFRIGERANT_IDS, refrigerant } from '../../src/refrigerant/fluids';
import { OutOfRangeError } from '../../src/refrigerant/outOfRangeError';

const LOWEST_PA = 0.5;
const HIGHEST_PA = 25e6;

describe.each(REFRIGERANT_IDS)('isobar of %s', (id) => {
  const fluid = refrigerant(id);
  const isobar = fluid.isobar('continue');
  const pressures = Array.from(
    { length: 400 },
    (_, i) => LOWEST_PA * exp((i / 399) * ln(HIGHEST_PA / LOWEST_PA)),
  );

  it('is continuous across both edges of the dome', () => {
    for (const pressurePa of pressures) {
      isobar.setPressurePa(pressurePa);
      const { liquidEnthalpyJPerKg: hl, vapourEnthalpyJPerKg: hv } = isobar;
      const beside = 1e-6;
      expect(Math.abs(isobar.volumeM3PerKg(hl - beside) / isobar.liquidVolumeM3PerKg - 1)).toBeLessThan(1e-9);
      expect(Math.abs(isobar.volumeM3PerKg(hv + beside) / isobar.vapourVolumeM3PerKg - 1)).toBeLessThan(1e-9);
      expect(Math.abs(isobar.temperatureK(hl - beside) - isobar.temperatureK(hl))).toBeLessThan(1e-8);
      expect(Math.abs(isobar.temperatureK(hv + beside) - isobar.temperatureK(hv))).toBeLessThan(1e-8);
      expect(Math.abs(isobar.entropyJPerKgK(hl - beside) - isobar.liquidEntropyJPerKgK)).toBeLessThan(1e-8);
      expect(Math.abs(isobar.entropyJPerKgK(hv + beside) - isobar.vapourEntropyJPerKgK)).toBeLessThan(1e-8);
    }
  });

  it('lets volume fall with pressure and rise with enthalpy, everywhere and past the ends', () => {
    for (let h = 140e3; h <= 620e3; h += 20e3) {
      let last = Number.POSITIVE_INFINITY;
      for (const pressurePa of pressures) {
        isobar.setPressurePa(pressurePa);
        const volume = isobar.volumeM3PerKg(h);
        expect(volume, `${pressurePa} Pa, ${h} J/kg`).toBeGreaterThan(0);
        // Liquid near vacuum is stiff beyond the last stored digit.
        const slack = pressurePa < 10e3 ? 1e-8 : 0;
        expect(volume, `${pressurePa} Pa, ${h} J/kg`).toBeLessThan(last * (1 + slack));
        expect(isobar.volumeM3PerKg(h + 1000), `${pressurePa} Pa, ${h} J/kg`).toBeGreaterThan(volume);
        last = volume;
      }
    }
  });

  it('lets temperature and entropy rise with enthalpy', () => {
    for (const pressurePa of pressures) {
      isobar.setPressurePa(pressurePa);
      for (let h = 90e3; h <= 620e3; h += 7e3) {
        expect(isobar.temperatureK(h + 2000)).toBeGreaterThanOrEqual(isobar.temperatureK(h));
        expect(isobar.entropyJPerKgK(h + 2000)).toBeGreaterThan(isobar.entropyJPerKgK(h));
        expect(isobar.temperatureSlope(h)).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('says the same all at once as one by one', () => {
    const all = new Float64Array(4);
    for (let i = 0; i < 3000; i++) {
      isobar.setPressurePa(
        20 * exp(keyedUniform(4, 'pressure', id, i) * ln((3 * fluid.criticalPressurePa) / 20)),
      );
      const h = 120e3 + 500e3 * keyedUniform(4, 'enthalpy', id, i);
      isobar.lookUp(h, all);
      expect(all[0]).toBeCloseTo(isobar.temperatureK(h), 9);
      expect(all[1] / isobar.volumeM3PerKg(h)).toBeCloseTo(1, 11);
      expect(all[2]).toBeCloseTo(isobar.temperatureSlope(h), 12);
      const step = 0.01;
      const rise = (isobar.volumeM3PerKg(h + step) - isobar.volumeM3PerKg(h - step)) / (2 * step);
      const edges = [isobar.liquidEnthalpyJPerKg, isobar.vapourEnthalpyJPerKg];
      if (edges.every((edge) => Math.abs(edge - h) > step)) expect(all[3] / rise).toBeCloseTo(1, 3);
    }
  });

  it('turns temperature and entropy back into the enthalpy they came from', () => {
    for (let i = 0; i < 2000; i++) {
      isobar.setPressurePa(20 * exp(keyedUniform(2, 'pressure', id, i) * ln(fluid.range.maxPressurePa / 20)));
      const h = 150e3 + 400e3 * keyedUniform(2, 'enthalpy', id, i);
      expect(Math.abs(isobar.enthalpyFromEntropyJPerKg(isobar.entropyJPerKgK(h)) - h)).toBeLessThan(0.01);
      if (isobar.quality(h) >= 0 && isobar.quality(h) <= 1) continue;
      expect(Math.abs(isobar.enthalpyFromTemperatureJPerKg(isobar.temperatureK(h)) - h)).toBeLessThan(0.01);
    }
  });

  it('stays finite for any physical state when told to continue', () => {
    for (let i = 0; i < 5000; i++) {
      const pressurePa = 0.01 * exp(keyedUniform(3, 'pressure', id, i) * ln(1e10));
      const h = -200e3 + 1400e3 * keyedUniform(3, 'enthalpy', id, i);
      isobar.setPressurePa(pressurePa);
      const answers = [
        isobar.temperatureK(h),
        isobar.volumeM3PerKg(h),
        isobar.entropyJPerKgK(h),
        isobar.temperatureSlope(h),
      ];
      expect(
        answers.every((value) => Number.isFinite(value)),
        `${pressurePa} Pa, ${h} J/kg: ${answers}`,
      ).toBe(true);
      expect(isobar.volumeM3PerKg(h)).toBeGreaterThan(0);
    }
  });

  it('refuses a pressure outside its range and says the range', () => {
    const strict = fluid.isobar();
    const { minPressurePa, maxPressurePa } = fluid.range;
    for (const pressurePa of [0, -1, 0.99 * minPressurePa, 1.01 * maxPressurePa, Number.NaN]) {
      expect(() => strict.setPressurePa(pressurePa)).toThrow(OutOfRangeError);
      expect(() => strict.setPressurePa(pressurePa)).toThrow(`${minPressurePa} to ${maxPressurePa} Pa`);
    }
    strict.setPressurePa(minPressurePa);
    strict.setPressurePa(maxPressurePa);
    expect(strict.pressurePa).toBe(maxPressurePa);
  });

  it('has a saturation line up to the critical point and not beyond', () => {
    const { criticalTemperatureK, criticalPressurePa, range } = fluid;
    expect(fluid.saturationPressurePa(criticalTemperatureK) / criticalPressurePa).toBeCloseTo(1, 9);
    expect(fluid.saturationTemperatureK(criticalPressurePa)).toBeCloseTo(criticalTemperatureK, 6);
    expect(() => fluid.saturationPressurePa(criticalTemperatureK + 0.01)).toThrow(OutOfRangeError);
    expect(() => fluid.saturationPressurePa(range.minSaturationTemperatureK - 0.01)).toThrow(OutOfRangeError);
    for (let t = range.minSaturationTemperatureK + 1; t < criticalTemperatureK; t += 3) {
      expect(fluid.saturationTemperatureK(fluid.saturationPressurePa(t))).toBeCloseTo(t, 8);
    }
  });
});
