/**
 * The thermal switch on the compressor's head: it feels the body or the gas that leaves, whichever is hotter, with a lag,
 * and opens the line to the clutch (trade: discharge or case over 150 to 180 degC opens; from memory).
 */
import type { Network } from '../network';
import type { CarLoop } from './assembleLoop';
import { AT } from './carNumbers';
import { latch } from './latch';
import type { VehicleData } from './vehicles';

const FELT_LAG_S = 5;

/** The hotter of its body and of the gas behind it, K. */
export function hottestK(network: Network, loop: CarLoop): number {
  const body = network.wallTemperatureK(loop.low, network.cellCount(loop.low) - 1);
  return Math.max(body, network.temperatureK(loop.high, 0));
}

export function stepThermal(
  network: Network,
  thermal: VehicleData['switches']['thermal'],
  loop: CarLoop,
  dtS: number,
): void {
  const r = network.reserve;
  r[AT.feltThermalK] += ((hottestK(network, loop) - r[AT.feltThermalK]) * dtS) / (FELT_LAG_S + dtS);
  r[AT.thermalSwitch] = latch(r[AT.thermalSwitch], -r[AT.feltThermalK], -thermal.opens, -thermal.closes);
}
