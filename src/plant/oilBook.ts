/**
 * Which kinds of oil are in the loop and its hoses. The network has one oil; the kinds are shares of it, taken as mixed: what
 * the cans have given since the book was made came in, and what is missing then left evenly. Made anew each second.
 */
import { OIL_KINDS, type OilKind } from '../equipment/oils';
import type { PlantParts } from './assemblePlant';
import { dueNow } from './due';
import type { TaskDesk } from './taskDesk';

export type OilParts = Pick<PlantParts, 'car' | 'cans' | 'hoses' | 'desk' | 'onBench'>;
type Oil = TaskDesk['oil'];

/** What a can's oil is: common practice, no source. */
const inCans = (refrigerant: string): OilKind => (refrigerant === 'R-12' ? 'mineral' : 'PAG');

/** Present book, from what the network holds. */
export function oilNow(parts: OilParts): Oil {
  const kg = Object.fromEntries(OIL_KINDS.map((kind) => [kind, oilKgNow(parts, kind)])) as Oil['kg'];
  return { kg, fromCansKg: oilFromCansKg(parts) };
}

/** Of one kind in that book, kg. */
export function oilKgNow(parts: OilParts, kind: OilKind): number {
  const { kg } = parts.desk.tasks.oil;
  const cameKg = cameSinceKg(parts);
  const bookedKg = OIL_KINDS.reduce((sum, one) => sum + kg[one], 0);
  const share = bookedKg + cameKg > 0 ? heldKg(parts) / (bookedKg + cameKg) : 0;
  return kind === inCans(parts.onBench) ? share * kg[kind] + share * cameKg : share * kg[kind];
}

/** All that came out of cans by now, kg. */
export const oilFromCansKg = (parts: OilParts): number =>
  parts.desk.tasks.oil.fromCansKg + cameSinceKg(parts);

const cameSinceKg = (parts: OilParts): number =>
  Math.max(0, givenKg(parts) - parts.desk.tasks.oil.fromCansKg);

/** Before and after oil of a kind is brought in: `kg` of it came. */
export function addOil(parts: OilParts, kind: OilKind, bring: () => number): number {
  parts.desk.tasks.oil = oilNow(parts);
  const cameKg = bring();
  parts.desk.tasks.oil.kg[kind] += cameKg;
  return cameKg;
}

/** Share of the oil that does not belong in the car as it stands; a converted car takes either of the new kinds. */
export function wrongOilShare(parts: OilParts): number {
  const { desk, car } = parts;
  const { kg } = oilNow(parts);
  const totalKg = OIL_KINDS.reduce((sum, kind) => sum + kg[kind], 0);
  if (totalKg <= 0) return 0;
  const { oil } = dueNow(car.vehicle, desk);
  const fits = (kind: OilKind): boolean =>
    kind === oil || (desk.refitted.length > 0 && car.vehicle.conversion !== undefined && kind !== 'mineral');
  const rightKg = OIL_KINDS.filter(fits).reduce((sum, kind) => sum + kg[kind], 0);
  return Math.max(0, 1 - rightKg / totalKg);
}

/** Oil in the loop alone, kg. */
export const loopOilKg = ({ car: { network, loop } }: Pick<PlantParts, 'car'>): number =>
  network.massKg(loop.high, 'oil') + network.massKg(loop.low, 'oil');

function heldKg(parts: OilParts): number {
  let sum = loopOilKg(parts);
  for (const { vessel } of parts.hoses.values()) sum += parts.car.network.massKg(vessel, 'oil');
  return sum;
}

/** Oil that has left the cans, kg; their dye is oil too. */
function givenKg({ cans, car }: OilParts): number {
  let sum = 0;
  for (const { spec, vessel } of cans.values())
    sum += (spec.oilKg ?? 0) + (spec.dyeKg ?? 0) - car.network.massKg(vessel, 'oil');
  return sum;
}
