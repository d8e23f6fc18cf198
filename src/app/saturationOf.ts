/** Samples of the saturation line for gauges and diagram, from the property tables: one every kelvin. */
import type { SaturationLine } from '../instruments/saturation';
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
  };
}
