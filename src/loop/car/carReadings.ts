/** Truths about a running car that people have names for: gauge pressures, superheat, subcooling, vent, capacity. */

import { partNamed } from './assembleLoop';
import type { Car } from './car';

export interface CarReadings {
  readonly highSideGaugePa: number;
  readonly lowSideGaugePa: number;
  readonly ventK: number;
  /** Of the vapour behind the coil, over saturation; 0 when wet. */
  readonly superheatK: number;
  /** Of the liquid at the metering device, under saturation; 0 with gas in it. */
  readonly subcoolingK: number;
  readonly dischargeK: number;
  readonly suctionK: number;
  readonly liquidLineK: number;
  /** Behind the last part before the suction line: superheat of what the compressor gets. */
  readonly suctionSuperheatK: number;
  /** What a clamp thermometer finds between the first part behind the condenser and the liquid line's end, by their walls. */
  readonly lineStepK: number;
  /** Dry air out of the vents. */
  readonly ventFlowKgPerS: number;
  readonly capacityW: number;
  readonly compressorW: number;
  readonly liquidToCompressorKg: number;
}

export function readCar(car: Car): CarReadings {
  const { network, loop } = car;
  const { high, low } = loop;
  const atmosphere = car.number('ambientPressurePa');
  const coil = partNamed(loop.parts, 'evaporator');
  const coilEnd = coil.firstCell + coil.cells - 1;
  const suction = partNamed(loop.parts, 'suction').firstCell;
  const liquid = partNamed(loop.parts, 'liquid');
  const liquidEnd = liquid.firstCell + liquid.cells - 1;
  const begin = loop.parts[loop.parts.indexOf(partNamed(loop.parts, 'condenser')) + 1];
  const beginK = network.wallTemperatureK(high, begin.firstCell + begin.cells - 1);
  // 0 before the first step
  const endK = network.meter(loop.metering, 'lineEndK') || network.wallTemperatureK(high, liquidEnd);
  const lowSaturation = network.saturationTemperatureK(low);
  return {
    highSideGaugePa: network.pressurePa(high) - atmosphere,
    lowSideGaugePa: network.pressurePa(low) - atmosphere,
    ventK: car.number('ventK'),
    superheatK: Math.max(0, network.temperatureK(low, coilEnd) - lowSaturation),
    subcoolingK: Math.max(0, network.saturationTemperatureK(high) - network.temperatureK(high, liquidEnd)),
    dischargeK: network.temperatureK(high, 0),
    suctionK: network.temperatureK(low, suction),
    liquidLineK: network.temperatureK(high, liquidEnd),
    suctionSuperheatK: Math.max(0, network.temperatureK(low, suction) - lowSaturation),
    lineStepK: beginK - endK,
    ventFlowKgPerS: car.number('coilFlow'),
    capacityW: car.number('coilHeatW') + car.number('rearHeatW'),
    compressorW: network.workW(loop.compressor) * (car.number('compressorRevPerS') > 0 ? 1 : 0),
    liquidToCompressorKg: network.linkMemory(loop.compressor, 0),
  };
}
