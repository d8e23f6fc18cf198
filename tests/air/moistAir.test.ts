/**
 * Moist air against (a) an open-source implementation of ASHRAE Handbook Fundamentals 2017 ch. 1, at 101.325 kPa, and
 * (b) real-gas states by CoolProp's HAPropsSI (tests/reference/properties/humid-air.csv), from which the ideal-gas
 * formulas differ by up to 0.6 % in humidity ratio, 0.1 K in wet bulb and 200 J/kg in enthalpy.
 */
import { describe, expect, it } from 'vitest';
import {
  condensingHeatJPerKg,
  dewPointK,
  humidityRatio,
  moistAirDensityKgPerM3,
  moistAirEnthalpyJPerKg,
  moistAirHeatCapacityJPerKgK,
  moistAirVolumeM3PerKg,
  relativeHumidity,
  temperatureFromEnthalpyK,
  waterEnthalpyJPerKg,
  wetBulbK,
} from '../../src/air/moistAir';
import { waterSaturationPressurePa } from '../../src/air/saturatedAir';
import { fastSaturationHumidityRatio, fastWaterSaturationPressurePa } from '../../src/air/saturationTable';
import { STANDARD_ATMOSPHERE_PA } from '../../src/units/pressure';
import { celsiusFromKelvin, kelvinFromCelsius } from '../../src/units/temperature';
import { readCsv, worst } from '../reference/readCsv';

describe('saturation pressure of water (Hyland & Wexler 1983)', () => {
  const rows: readonly (readonly [number, number])[] = [
    [-20, 103.26],
    [-10, 259.9],
    [0, 611.15],
    [10, 1228.0],
    [20, 2338.8],
    [25, 3169.22],
    [30, 4246.03],
    [35, 5627.82],
    [40, 7383.46],
    [50, 12349.86],
  ];

  it.each(rows)('at %d °C is %d Pa', (celsius, pressurePa) => {
    expect(Math.abs(waterSaturationPressurePa(kelvinFromCelsius(celsius)) - pressurePa)).toBeLessThan(
      0.006 + 1e-5 * pressurePa,
    );
  });

  it('is met by the fast table within 1e-5 from 205 to 400 K', () => {
    for (let t = 205; t < 400; t += 0.37) {
      expect(Math.abs(fastWaterSaturationPressurePa(t) / waterSaturationPressurePa(t) - 1)).toBeLessThan(
        1e-5,
      );
    }
    expect(fastSaturationHumidityRatio(280, 1e5)).toBeCloseTo(humidityRatio(280, 1, 1e5), 7);
    expect(fastSaturationHumidityRatio(390, 1e5)).toBeLessThan(1000);
    expect(fastWaterSaturationPressurePa(100)).toBeGreaterThan(0);
  });
});

describe('moist air at 101.325 kPa (ASHRAE formulas)', () => {
  // °C, %, W g/kg, h kJ/kg, wet bulb °C, dew point °C, v m3/kg
  const rows: readonly (readonly number[])[] = [
    [20, 50, 7.262, 38.55, 13.78, 9.27, 0.8402],
    [25, 50, 9.881, 50.32, 17.89, 13.86, 0.858],
    [27, 47, 10.465, 53.86, 19.01, 14.74, 0.8646],
    [30, 40, 10.603, 57.29, 20.06, 14.94, 0.8734],
    [32.2, 50, 15.13, 71.14, 23.82, 20.46, 0.8861],
    [35, 40, 14.132, 71.47, 23.93, 19.38, 0.8928],
    [38, 40, 16.72, 81.23, 26.27, 22.05, 0.9051],
    [40, 30, 13.9, 76.04, 25.09, 19.13, 0.9069],
    [43.3, 20, 10.976, 71.89, 24.12, 15.46, 0.9123],
    [10, 100, 7.63, 29.28, 10.0, 10.0, 0.812],
    [5, 100, 5.402, 18.59, 5.0, 5.0, 0.7948],
    [0, 100, 3.774, 9.44, 0.0, 0.0, 0.7785],
  ];

  it.each(rows)(
    'at %d °C and %d %%',
    (celsius, percent, gramsPerKg, kilojoule, wetBulb, dewPoint, volume) => {
      const t = kelvinFromCelsius(celsius);
      const w = humidityRatio(t, percent / 100, STANDARD_ATMOSPHERE_PA);
      expect(Math.abs(1000 * w - gramsPerKg)).toBeLessThan(0.001);
      expect(Math.abs(moistAirEnthalpyJPerKg(t, w) / 1000 - kilojoule)).toBeLessThan(0.006);
      expect(Math.abs(celsiusFromKelvin(wetBulbK(t, w, STANDARD_ATMOSPHERE_PA)) - wetBulb)).toBeLessThan(
        0.011,
      );
      expect(Math.abs(celsiusFromKelvin(dewPointK(w, STANDARD_ATMOSPHERE_PA)) - dewPoint)).toBeLessThan(
        0.011,
      );
      expect(Math.abs(moistAirVolumeM3PerKg(t, w, STANDARD_ATMOSPHERE_PA) - volume)).toBeLessThan(0.0001);
      expect(relativeHumidity(t, w, STANDARD_ATMOSPHERE_PA)).toBeCloseTo(percent / 100, 10);
      expect(temperatureFromEnthalpyK(moistAirEnthalpyJPerKg(t, w), w)).toBeCloseTo(t, 9);
      expect(moistAirDensityKgPerM3(t, w, STANDARD_ATMOSPHERE_PA) * volume).toBeCloseTo(1 + w, 3);
    },
  );

  // °C % in, °C % out, dry air kg/s; total W, sensible W, condensate kg/h.
  const coils: readonly (readonly number[])[] = [
    [35, 40, 8, 95, 0.12, 5672, 3345, 3.375],
    [27, 50, 7, 95, 0.11, 3693, 2259, 2.078],
    [25, 50, 5, 95, 0.1, 3232, 2049, 1.711],
    [38, 40, 12, 95, 0.13, 6216, 3505, 3.946],
  ];

  it.each(coils)(
    'through a cooling coil from %d °C %d %% to %d °C %d %%',
    (t1, rh1, t2, rh2, flow, total, sensible, kgPerHour) => {
      const [hot, cold] = [kelvinFromCelsius(t1), kelvinFromCelsius(t2)];
      const w1 = humidityRatio(hot, rh1 / 100, STANDARD_ATMOSPHERE_PA);
      const w2 = humidityRatio(cold, rh2 / 100, STANDARD_ATMOSPHERE_PA);
      const heat = flow * (moistAirEnthalpyJPerKg(hot, w1) - moistAirEnthalpyJPerKg(cold, w2));
      const drained = flow * (w1 - w2) * waterEnthalpyJPerKg(cold);
      expect(Math.abs(heat - drained - total)).toBeLessThan(3);
      expect(Math.abs(3600 * flow * (w1 - w2) - kgPerHour)).toBeLessThan(0.002);
      expect(Math.abs((flow * moistAirHeatCapacityJPerKgK(w1) * (hot - cold)) / sensible - 1)).toBeLessThan(
        0.01,
      );
      // Sensible heat and condensing heat make up the whole within the heat the water takes away.
      const parts =
        flow * moistAirHeatCapacityJPerKgK(w2) * (hot - cold) + flow * (w1 - w2) * condensingHeatJPerKg(hot);
      expect(Math.abs(parts / heat - 1)).toBeLessThan(0.03);
    },
  );
});

describe('moist air against real-gas states', () => {
  const rows = readCsv('humid-air.csv').map((row) => {
    const [p, t, rh] = [Number(row.p), Number(row.T), Number(row.RH)];
    return { row, p, t, w: humidityRatio(t, rh, p) };
  });

  it('has a hundred rows to meet', () => {
    expect(rows.length).toBe(100);
    expect(worst(rows, ({ row, w }) => w / Number(row.W) - 1).error).toBeLessThan(0.007);
    expect(worst(rows, ({ row, p, t, w }) => wetBulbK(t, w, p) - Number(row.T_wetbulb)).error).toBeLessThan(
      0.1,
    );
    expect(worst(rows, ({ row, p, w }) => dewPointK(w, p) - Number(row.T_dewpoint)).error).toBeLessThan(0.1);
    expect(
      worst(rows, ({ row, t }) => moistAirEnthalpyJPerKg(t, Number(row.W)) - Number(row.h)).error,
    ).toBeLessThan(200);
  });
});
