/** Oil in the compressor now, kg: what lubricates it. */
import type { Network } from '../network';
import type { CarLoop } from './assembleLoop';

export function compressorOilKg(network: Network, loop: CarLoop): number {
  return network.sumpOilKg(loop.low);
}
