/** Whatever turns the car's compressor, and how much of its stroke it makes, by what kind it is. */
import type { Network } from '../network';
import type { CarLoop, CarPart } from './assembleLoop';
import { stepClutch } from './clutch';
import { stepVariable } from './displacementControl';
import { stepElectric } from './electricDrive';
import type { VehicleData } from './vehicles';

export function stepCompressorDrive(
  network: Network,
  vehicle: VehicleData,
  loop: CarLoop,
  coil: CarPart,
  dtS: number,
): void {
  const { displacementControl, drive } = vehicle.compressor;
  if (drive) stepElectric(network, vehicle, drive, loop, coil, dtS);
  else if (displacementControl) stepVariable(network, vehicle, displacementControl, loop, coil, dtS);
  else stepClutch(network, vehicle, loop, dtS);
}
