/**
 * Brings faults to a car: what it is filled with, what still works, and the ways out they open. Faults are taken in one
 * order, whichever came first, so that a product or sum of three is the same to its last bit.
 */
import type { Car } from '../loop/car/car';
import { EDIT_NAMES, EDITS, type EditName } from '../loop/car/carNumbers';
import type { VehicleData } from '../loop/car/vehicles';
import type { ValveLink } from '../loop/networkTypes';
import type { ActiveFault, Filling } from './fault';
import { leakPlaceNamed } from './leakPlaceNamed';
import { faultIds, faultOf } from './registry';

/** What the loop holds at the start. */
export function fillingWith(active: readonly ActiveFault[], vehicle: VehicleData, sound: Filling): Filling {
  return inOrder(active).reduce(
    (filling, { id, severity, gas }) => faultOf(id).contents?.(filling, severity, vehicle, gas) ?? filling,
    sound,
  );
}

export type Edits = Readonly<Record<EditName, number>>;

/** What all the faults together make of every number that faults may edit; what is sound where none does. */
export function editsWith(active: readonly ActiveFault[], vehicle: VehicleData): Edits {
  const edits = Object.fromEntries(EDIT_NAMES.map((name) => [name, EDITS[name].sound])) as Record<
    EditName,
    number
  >;
  for (const { id, severity } of inOrder(active)) {
    const own = faultOf(id).parameters?.(severity, vehicle) ?? {};
    for (const name of EDIT_NAMES) {
      const value = own[name];
      if (value !== undefined) edits[name] = meet(name, edits[name], value);
    }
  }
  return edits;
}

function inOrder(active: readonly ActiveFault[]): readonly ActiveFault[] {
  const place = ({ id }: ActiveFault): number => faultIds.indexOf(id);
  return [...active].sort((a, b) => place(a) - place(b) || a.severity - b.severity || bySite(a, b));
}

function bySite({ site: one = '' }: ActiveFault, { site: other = '' }: ActiveFault): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}

function meet(name: EditName, one: number, other: number): number {
  switch (EDITS[name].meet) {
    case 'product':
      return one * other;
    case 'sum':
      return one + other;
    case 'least':
      return Math.min(one, other);
    case 'most':
      return Math.max(one, other);
  }
}

/** Ways out that the faults open; two at one place are one hole with the area of both. */
export function holesWith(active: readonly ActiveFault[], car: Car): readonly ValveLink[] {
  const holes = new Map<string, ValveLink>();
  for (const { id, severity, site } of inOrder(active)) {
    const { links, usualSite } = faultOf(id);
    if (!links) continue;
    for (const hole of links(severity, leakPlaceNamed(car, site ?? usualSite ?? 'condenser'))) {
      const areaM2 = hole.areaM2 + (holes.get(hole.id)?.areaM2 ?? 0);
      holes.set(hole.id, { ...hole, areaM2 });
    }
  }
  return [...holes.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Sets the car to exactly these faults: its numbers, and holes opened, closed or of another size. */
export function settleFaults(car: Car, active: readonly ActiveFault[]): void {
  const edits = editsWith(active, car.vehicle);
  for (const name of EDIT_NAMES) if (car.number(name) !== edits[name]) car.edit(name, edits[name]);
  settleHoles(car, holesWith(active, car));
}

function settleHoles(car: Car, wanted: readonly ValveLink[]): void {
  const { network } = car;
  for (const { slot, spec } of network.structure().links) {
    if (spec.kind !== 'valve' || !spec.id.startsWith('leak:')) continue;
    if (!wanted.some(({ id, areaM2 }) => id === spec.id && areaM2 === spec.areaM2)) network.removeLink(slot);
  }
  for (const spec of wanted) if (network.linkNamed(spec.id) < 0) network.addLink(spec);
}
