/** Wall of the coldest cell of a coil, K: where a probe between its fins sits. */
import type { Network } from '../network';
import type { CarPart } from './assembleLoop';

export function coldestFinK(network: Network, coil: CarPart): number {
  let coldest = 1e9;
  for (let i = 0; i < coil.cells; i++) {
    const wall = network.wallTemperatureK(coil.vessel, coil.firstCell + i);
    if (wall < coldest) coldest = wall;
  }
  return coldest;
}
