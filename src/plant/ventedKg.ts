/** kg of refrigerant, its own and a foreign one, that went to the air. */
import type { Network } from '../loop/network';

export function ventedKg(network: Network): number {
  return network.ventedKg('refrigerant') + network.ventedKg('foreign');
}
