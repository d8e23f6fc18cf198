/**
 * Torque that the compressor asks of its shaft, N m: its power over its speed; from rest, where there is no power yet,
 * the share of displacement times pressure difference that a turning one comes to in the model, 0.45 [guess].
 */
import type { Network } from '../network';
import type { CarLoop } from './assembleLoop';
import { AT } from './carNumbers';
import { isSeized } from './compressorWear';
import type { VehicleData } from './vehicles';

export const TWO_PI = 6.283185307179586;
const MEAN_PRESSURE_SHARE = 0.45;
const TURNS_REV_PER_S = 2;

/** Without end when it has seized. */
export function compressorTorqueNm(network: Network, vehicle: VehicleData, loop: CarLoop): number {
  const r = network.reserve;
  if (isSeized(r)) return Number.MAX_VALUE;
  const speed = r[AT.compressorRevPerS];
  if (speed > TURNS_REV_PER_S) return network.workW(loop.compressor) / (TWO_PI * speed);
  const difference = Math.max(0, network.pressurePa(loop.high) - network.pressurePa(loop.low));
  const swept = vehicle.compressor.displacement * r[AT.strokeShare];
  return (MEAN_PRESSURE_SHARE * swept * difference) / TWO_PI;
}
