/**
 * What is still wrong with a car, whatever anybody says of it: hidden faults that have begun and are not mended, and a
 * loop that does not hold what it should. A charge is proven only where the loop was empty, holds the right amount now, and
 * somebody has read a scale after it went in.
 */
import { faultOf } from '../faults/registry';
import type { PlantParts } from './assemblePlant';
import { dueNow } from './due';
import { TALLY } from './tally';

const FOREIGN_SHARE = 0.02;
const AIR_KG = 1e-3;
const TOLERANCES = 2;

export function faultsRemaining(parts: PlantParts): number {
  const { faults, tally } = parts;
  const parted = faults.remaining(tally[TALLY.step]).filter((id) => faultOf(id).contents === undefined);
  return parted.length + (contentsAreRight(parts) ? 0 : 1);
}

export const chargeIsProven = (parts: PlantParts): boolean =>
  parts.desk.tasks.wasEmpty && parts.desk.tasks.weighed && contentsAreRight(parts);

function contentsAreRight({ car, desk }: PlantParts): boolean {
  const { network, loop, vehicle } = car;
  const due = dueNow(vehicle, desk);
  const sum = (of: (side: number) => number): number => of(loop.high) + of(loop.low);
  const heldKg = sum((side) => network.chargeKg(side));
  const foreignKg = sum((side) => network.massKg(side, 'foreign'));
  const ownIsDue = network.refrigerantId === due.refrigerant;
  const strangeKg = ownIsDue ? foreignKg : heldKg - foreignKg;
  return (
    Math.abs(heldKg - due.chargeKg) <= TOLERANCES * due.toleranceKg &&
    strangeKg <= FOREIGN_SHARE * heldKg &&
    sum((side) => network.massKg(side, 'air')) <= AIR_KG
  );
}
