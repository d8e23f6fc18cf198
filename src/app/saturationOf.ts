/** Samples of the saturation line for gauges and diagram, from the property tables: one every kelvin. */
import type { SaturationLine } from '../instruments/saturation';
import { refrigerant } from '../refrigerant/fluids';
import type { RefrigerantId } from '../refrigerant/refrigerant';

const FROM_K = 233.15;
const STEP_K = 1;
/** How close to the critical point the dome is sampled. */
const SHORT_OF_CRITICAL_K = 0.4;

export function saturationOf(id: RefrigerantId): SaturationLine {
  const fluid = refrigerant(id);
  const isobar = fluid.isobar();
  const line = { fluid: id, temperatureK: [] as number[], pressurePa: [] as number[], liquidEnthalpyJPerKg: [] as number[], vapourEnthalpyJPerKg: [] as number[] };
  const end = Math.min(fluid.range.maxTemperatureK, fluid.criticalTemperatureK - SHORT_OF_CRITICAL_K);
  for (let i = 0; FROM_K + i * STEP_K <= end; i++) {
    const pressurePa = fluid.saturationPressurePa(FROM_K + i * STEP_K);
    if (!(pressurePa > fluid.range.minPressurePa && pressurePa < fluid.range.maxPressurePa)) continue;
    isobar.setPressurePa(pressurePa);
    line.temperatureK.push(FROM_K + i * STEP_K);
    line.pressurePa.push(pressurePa);
    line.liquidEnthalpyJPerKg.push(isobar.liquidEnthalpyJPerKg);
    line.vapourEnthalpyJPerKg.push(isobar.vapourEnthalpyJPerKg);
  }
  return line;
}
