/**
 * Moist air as a mixture of ideal gases, per kg of dry air: the formulas of ASHRAE Handbook Fundamentals, ch. 1
 * (psychrometrics). Enthalpy is 0 for dry air at 0 °C. Against real-gas air at 80 to 101 kPa: humidity ratio within 0.7 %,
 * wet bulb within 0.1 K, enthalpy within 200 J/kg.
 */
import { waterSaturationPressurePa } from './saturatedAir';

const WATER_TO_AIR_MASS = 0.621945;
const DRY_AIR_GAS_CONSTANT = 287.042;
const VOLUME_BY_HUMIDITY = 1.607858;
const DRY_AIR_CP = 1006;
const VAPOUR_CP = 1860;
const LATENT_AT_ZERO = 2501000;
const WATER_CP = 4186;
const ICE_CP = 2100;
const FUSION = 333400;
const ZERO_C_K = 273.15;
/** Least share of dry air in the total pressure that is reckoned with, so that hot walls give a large but finite ratio. */
const LEAST_AIR_SHARE = 0.01;

/** kg of water per kg of dry air, from the water's partial pressure. */
export function humidityRatioFromVapourPressure(vapourPressurePa: number, pressurePa: number): number {
  const airPressurePa = Math.max(pressurePa - vapourPressurePa, LEAST_AIR_SHARE * pressurePa);
  return (WATER_TO_AIR_MASS * vapourPressurePa) / airPressurePa;
}

/** kg/kg from relative humidity (share of one; over ice below 0.01 °C). */
export function humidityRatio(temperatureK: number, relativeHumidity: number, pressurePa: number): number {
  return humidityRatioFromVapourPressure(
    relativeHumidity * waterSaturationPressurePa(temperatureK),
    pressurePa,
  );
}

/** kg/kg of saturated air. */
export function saturationHumidityRatio(temperatureK: number, pressurePa: number): number {
  return humidityRatio(temperatureK, 1, pressurePa);
}

export function vapourPressurePa(humidityRatioKgPerKg: number, pressurePa: number): number {
  return (pressurePa * humidityRatioKgPerKg) / (WATER_TO_AIR_MASS + humidityRatioKgPerKg);
}

export function relativeHumidity(
  temperatureK: number,
  humidityRatioKgPerKg: number,
  pressurePa: number,
): number {
  return vapourPressurePa(humidityRatioKgPerKg, pressurePa) / waterSaturationPressurePa(temperatureK);
}

/** J per kg of dry air. */
export function moistAirEnthalpyJPerKg(temperatureK: number, humidityRatioKgPerKg: number): number {
  const t = temperatureK - ZERO_C_K;
  return DRY_AIR_CP * t + humidityRatioKgPerKg * (LATENT_AT_ZERO + VAPOUR_CP * t);
}

/** K, inverse of `moistAirEnthalpyJPerKg`. */
export function temperatureFromEnthalpyK(enthalpyJPerKg: number, humidityRatioKgPerKg: number): number {
  const heat = enthalpyJPerKg - humidityRatioKgPerKg * LATENT_AT_ZERO;
  return ZERO_C_K + heat / (DRY_AIR_CP + humidityRatioKgPerKg * VAPOUR_CP);
}

/** m3 of mixture per kg of dry air. */
export function moistAirVolumeM3PerKg(
  temperatureK: number,
  humidityRatioKgPerKg: number,
  pressurePa: number,
): number {
  return (DRY_AIR_GAS_CONSTANT * temperatureK * (1 + VOLUME_BY_HUMIDITY * humidityRatioKgPerKg)) / pressurePa;
}

/** kg of mixture per m3. */
export function moistAirDensityKgPerM3(
  temperatureK: number,
  humidityRatioKgPerKg: number,
  pressurePa: number,
): number {
  return (1 + humidityRatioKgPerKg) / moistAirVolumeM3PerKg(temperatureK, humidityRatioKgPerKg, pressurePa);
}

/** J/(kg K) of the mixture per kg of dry air. */
export function moistAirHeatCapacityJPerKgK(humidityRatioKgPerKg: number): number {
  return DRY_AIR_CP + humidityRatioKgPerKg * VAPOUR_CP;
}

/** Heat given up by 1 kg of vapour that condenses at `temperatureK`, J/kg; freezing below 0 °C included. */
export function condensingHeatJPerKg(temperatureK: number): number {
  return LATENT_AT_ZERO + VAPOUR_CP * (temperatureK - ZERO_C_K) - waterEnthalpyJPerKg(temperatureK);
}

/** J/kg of liquid water above 0 °C, ice below. */
export function waterEnthalpyJPerKg(temperatureK: number): number {
  const t = temperatureK - ZERO_C_K;
  return t >= 0 ? WATER_CP * t : ICE_CP * t - FUSION;
}

/** K at which water in this air begins to condense (or frost). */
export function dewPointK(humidityRatioKgPerKg: number, pressurePa: number): number {
  const wanted = vapourPressurePa(humidityRatioKgPerKg, pressurePa);
  return bisectRising((t) => waterSaturationPressurePa(t) - wanted, 173.15, 473.15);
}

/** Thermodynamic wet bulb, K: the air and water leaving at that temperature carry the enthalpy that came in. */
export function wetBulbK(temperatureK: number, humidityRatioKgPerKg: number, pressurePa: number): number {
  const enthalpy = moistAirEnthalpyJPerKg(temperatureK, humidityRatioKgPerKg);
  return bisectRising(
    (t) => {
      const saturated = saturationHumidityRatio(t, pressurePa);
      return (
        moistAirEnthalpyJPerKg(t, saturated) -
        enthalpy -
        (saturated - humidityRatioKgPerKg) * waterEnthalpyJPerKg(t)
      );
    },
    173.15,
    temperatureK,
  );
}

/** Root of a rising function, to 1e-9 K; the nearer end if there is none inside. */
function bisectRising(f: (t: number) => number, low: number, high: number): number {
  let a = low;
  let b = high;
  while (b - a > 1e-9) {
    const middle = 0.5 * (a + b);
    if (middle <= a || middle >= b) break;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return 0.5 * (a + b);
}
