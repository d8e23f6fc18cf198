/** Samples of the saturation line for gauges and diagram, from the property tables: one every kelvin; vapour beside it. */
import { ISOTHERMS_K } from '../instruments/isotherms';
import type { SaturationLine, VapourIsotherm } from '../instruments/saturation';
import { refrigerant } from '../refrigerant/fluids';
import { OutOfRangeError } from '../refrigerant/outOfRangeError';
import type { Refrigerant, RefrigerantId } from '../refrigerant/refrigerant';

const FROM_K = 233.15;
const STEP_K = 1;

/** Saturation pressure where the tables answer; null beyond them. */
function pressureAt(fluid: Refrigerant, temperatureK: number): number | null {
  try {
    return fluid.saturationPressurePa(temperatureK);
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

export function saturationOf(id: RefrigerantId): SaturationLine {
  const fluid = refrigerant(id);
  const isobar = fluid.isobar();
  const temperatureK: number[] = [];
  const pressurePa: number[] = [];
  const liquidEnthalpyJPerKg: number[] = [];
  const vapourEnthalpyJPerKg: number[] = [];
  for (let i = 0; FROM_K + i * STEP_K < fluid.criticalTemperatureK; i++) {
    const pressure = pressureAt(fluid, FROM_K + i * STEP_K);
    if (pressure === null || pressure < fluid.range.minPressurePa || pressure > fluid.range.maxPressurePa)
      continue;
    isobar.setPressurePa(pressure);
    temperatureK.push(FROM_K + i * STEP_K);
    pressurePa.push(pressure);
    liquidEnthalpyJPerKg.push(isobar.liquidEnthalpyJPerKg);
    vapourEnthalpyJPerKg.push(isobar.vapourEnthalpyJPerKg);
  }
  const { criticalPressurePa } = fluid;
  return {
    fluid: id,
    temperatureK,
    pressurePa,
    liquidEnthalpyJPerKg,
    vapourEnthalpyJPerKg,
    criticalPressurePa,
    superheated: ISOTHERMS_K.map((temperature) => vapourAlong(fluid, temperature)),
  };
}

const LEAST_PA = 100_000;
/** Over this vapour near the critical point is left alone. */
const MOST_SHARE = 0.85;
const STEPS = 24;

/** Vapour at one temperature, evenly in ln p from where it condenses down to the foot of the diagram. */
function vapourAlong(fluid: Refrigerant, temperatureK: number): VapourIsotherm {
  const isobar = fluid.isobar();
  const topPa = Math.min(
    pressureAt(fluid, temperatureK) ?? Number.POSITIVE_INFINITY,
    MOST_SHARE * fluid.criticalPressurePa,
  );
  const pressurePa: number[] = [];
  const enthalpyJPerKg: number[] = [];
  for (let i = 0; topPa > LEAST_PA && i <= STEPS; i++) {
    const pressure = topPa * (LEAST_PA / topPa) ** (i / STEPS);
    isobar.setPressurePa(pressure);
    const enthalpy =
      i === 0 && topPa < MOST_SHARE * fluid.criticalPressurePa
        ? isobar.vapourEnthalpyJPerKg
        : isobar.enthalpyFromTemperatureJPerKg(temperatureK);
    pressurePa.push(pressure);
    enthalpyJPerKg.push(enthalpy);
  }
  return { temperatureK, pressurePa, enthalpyJPerKg };
}
