/** The clutch: in where cooling is asked for and every switch allows it, and what of the pulley's speed it passes on. */
import type { Network } from '../network';
import type { CarLoop } from './assembleLoop';
import { AT } from './carNumbers';
import type { VehicleData } from './vehicles';

const CLUTCH_LAG_S = 0.1;

export function stepClutch(network: Network, vehicle: VehicleData, loop: CarLoop, dtS: number): void {
  const r = network.reserve;
  const asked = r[AT.airConditioningOn] > 0.5 && r[AT.engineRevPerS] > 0 && r[AT.blowerStep] > 0.5;
  const allowed = r[AT.lowSwitch] * r[AT.highSwitch] * r[AT.finSwitch] * r[AT.thermalSwitch] > 0.5;
  const wanted = asked && allowed && r[AT.clutchHealth] > 0;
  if (wanted && r[AT.clutchIn] < 0.5) r[AT.clutchCycles] += 1;
  r[AT.clutchIn] = wanted ? 1 : 0;
  if (wanted) r[AT.clutchOnS] += dtS;
  // a worn clutch slips: what it passes on of the pulley's speed
  const target = wanted ? r[AT.engineRevPerS] * vehicle.compressor.pulleyRatio * r[AT.clutchHealth] : 0;
  const speed = r[AT.compressorRevPerS] + ((target - r[AT.compressorRevPerS]) * dtS) / (CLUTCH_LAG_S + dtS);
  r[AT.compressorRevPerS] = speed < 0.01 ? 0 : speed;
  network.setSpeed(loop.compressor, r[AT.compressorRevPerS]);
}
