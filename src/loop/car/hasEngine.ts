/** A car whose compressor hangs on its high voltage has no engine: it stands ready, and cools without one. */
import type { VehicleData } from './vehicles';

export function hasEngine({ compressor }: Pick<VehicleData, 'compressor'>): boolean {
  return compressor.drive?.supply !== 'high-voltage';
}
