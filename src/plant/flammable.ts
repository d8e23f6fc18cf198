/** Gas that burns: how much of it is in the loop, and in the cloud of air round an open joint. */
import { CLOUD, FUMES, M3_PER_MOL } from '../equipment/fumes';
import type { PlantParts } from './assemblePlant';
import { HAZARD } from './tally';

/** Of a vessel's charge, from which on it counts as one that burns [guess]. */
const COUNTS_FROM = 0.04;

/** Share by volume of gas that burns in the cloud. */
export function burningShare({ tally }: Pick<PlantParts, 'tally'>): number {
  return Math.min(1, (tally[HAZARD.cloudMol] * M3_PER_MOL) / CLOUD.volumeM3);
}

/** Whether what a vessel holds would burn. */
export function holdsFlammable(
  { car: { network }, foreign }: Pick<PlantParts, 'car' | 'foreign'>,
  vessel: number,
): boolean {
  const chargeKg = network.chargeKg(vessel);
  const own = FUMES[network.refrigerantId].burnsFrom === null ? 0 : network.massKg(vessel, 'refrigerant');
  const other = foreign && FUMES[foreign].burnsFrom !== null ? network.massKg(vessel, 'foreign') : 0;
  return own + other > COUNTS_FROM * chargeKg && chargeKg > 0.001;
}
