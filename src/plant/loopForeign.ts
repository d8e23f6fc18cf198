/** What of a vessel or of the loop is another gas than the bench's, kg: the bench's is not always the network's own. */
import type { VesselIndex } from '../loop/networkTypes';
import type { PlantParts } from './assemblePlant';

type Parts = Pick<PlantParts, 'car' | 'onBench'>;

export function otherGasKg({ car: { network }, onBench }: Parts, vessel: VesselIndex): number {
  const foreignKg = network.massKg(vessel, 'foreign');
  return network.refrigerantId === onBench ? foreignKg : network.chargeKg(vessel) - foreignKg;
}

export function loopForeignKg(parts: Parts): number {
  const { low, high } = parts.car.loop;
  return otherGasKg(parts, low) + otherGasKg(parts, high);
}
