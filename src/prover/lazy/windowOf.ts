/** The window of the service information for air of this temperature: the printed line nearest to it. */
import { type VehicleData, vehicleOf } from '../../loop/car/vehicles';

type Line = VehicleData['service']['lines'][number];

export function windowOf(vehicle: string, outsideK: number): Line {
  const { lines } = vehicleOf(vehicle).service;
  const off = ({ ambient }: Line): number => Math.abs(ambient - outsideK);
  return lines.reduce((best, line) => (off(line) < off(best) ? line : best), lines[0]);
}
